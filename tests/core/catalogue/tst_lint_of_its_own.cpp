#include <QTest>

#include "lint_samples.h"

using namespace lidlark;
using namespace lidlark::catalogue;
using samples::catalogueWith;
using samples::soundEntry;

// What the authoring checklist says of two entries that share words or pictures.

namespace {

/// Another entry that shares nothing with the sound one but one step.
Activity otherWithStep(const char *step)
{
    Activity other = soundEntry();
    other.id = {"pebble-again"};
    other.name = "Pebble Again";
    other.picture.drawing = "scene-pebble-again";
    other.easier[0].text = "Hold the pot still";
    other.harder[0].text = "Let the pot wobble";
    other.say = {"Nothing said twice."};
    other.steps = {{step, std::nullopt}};
    return other;
}

QString findingsBeside(const Activity &activity, const Activity &other)
{
    return samples::shownFindings(lint(activity, catalogueWith({activity, other})));
}

} // namespace

class TestLintOfItsOwn : public QObject
{
    Q_OBJECT

private slots:
    void nothingSharedIsNothingFound();
    void theSameNameIsFound();
    void theSameLineIsFoundWhateverItsCase();
    void theSameDrawingIsFound();
    void aLineThatReadsAlikeIsFound();
    void linesOfAnotherKindMayBeTheSame();
    void shortLinesAreOnlyComparedWhole();
    void anEntryIsNotComparedWithItself();
};

void TestLintOfItsOwn::nothingSharedIsNothingFound()
{
    QCOMPARE(findingsBeside(soundEntry(), otherWithStep("Something else here.")), QString());
}

void TestLintOfItsOwn::theSameNameIsFound()
{
    Activity other = otherWithStep("Something else here.");
    other.name = "Pebble, post";
    QCOMPARE(findingsBeside(soundEntry(), other), QString("of-its-own name"));
}

void TestLintOfItsOwn::theSameLineIsFoundWhateverItsCase()
{
    Activity other = otherWithStep("post SIX beads");
    other.say = {"I heard that one land?"};
    other.easier[0].text = "A smaller pot stands far away.";
    QCOMPARE(findingsBeside(soundEntry(), other),
             QString("of-its-own steps[2].text; of-its-own harder[1].text; of-its-own say[1]"));
}

void TestLintOfItsOwn::theSameDrawingIsFound()
{
    Activity other = otherWithStep("Something else here.");
    other.picture.drawing = "scene-pebble-post-2";
    QCOMPARE(findingsBeside(soundEntry(), other), QString("drawings picture"));
}

/// Eight runs of three words; with one word exchanged near the end six of them are left (75 %),
/// with one in the middle five (62 %).
void TestLintOfItsOwn::aLineThatReadsAlikeIsFound()
{
    const Activity other = otherWithStep("one two three four five six seven eight nine ten");
    Activity activity = soundEntry();
    activity.steps[0].text = "One two three four five six seven eight other ten.";
    QCOMPARE(findingsBeside(activity, other), QString("of-its-own steps[1].text"));
    activity.steps[0].text = "One two three four five six other eight nine ten.";
    QCOMPARE(findingsBeside(activity, other), QString());
}

/// They stand somewhere else on the screen.
void TestLintOfItsOwn::linesOfAnotherKindMayBeTheSame()
{
    Activity activity = soundEntry();
    activity.say[0] = "Something else here.";
    QCOMPARE(findingsBeside(activity, otherWithStep("Something else here.")), QString());
}

void TestLintOfItsOwn::shortLinesAreOnlyComparedWhole()
{
    Activity activity = soundEntry();
    activity.steps[1].text = "Post all six now.";
    QCOMPARE(findingsBeside(activity, otherWithStep("Post all six.")), QString());
}

/// As the workbench asks: the entry being edited, against the catalogue with its older form.
void TestLintOfItsOwn::anEntryIsNotComparedWithItself()
{
    Activity edited = soundEntry();
    edited.waysIn.seated = "Pot on a tray, beads in a dish beside it.";
    QCOMPARE(samples::shownFindings(lint(edited, catalogueWith({soundEntry()}))), QString());
}

QTEST_APPLESS_MAIN(TestLintOfItsOwn)
#include "tst_lint_of_its_own.moc"
