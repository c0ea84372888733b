#include <QTest>

#include "catalogue_samples.h"
#include "shipped_catalogue.h"

#include "core/grading/balloon.h"

#include <set>
#include <string>

using namespace samples;

/// Facts on lines for easier and harder: computed anew, and refused where a file says otherwise.
class TestCatalogueFacts : public QObject
{
    Q_OBJECT

private slots:
    void aTrueFactIsRead_data();
    void aTrueFactIsRead();
    void aFactIsKeptAsComputed();
    void aLineWithoutAFactHasNone();
    void aFactAMistakeOffIsNamed_data();
    void aFactAMistakeOffIsNamed();
    void aTenthOffIsNear_data();
    void aTenthOffIsNear();
    void easierMustBeEasierThanHarder_data();
    void easierMustBeEasierThanHarder();
    void differentFactsAreNotCompared();
    void theShippedFactsAreOnTheirLines();

private:
    static std::string withFacts(const QString &easier, const QString &harder = {})
    {
        const auto line = [](const QString &fact) {
            return fact.isEmpty() ? std::string() : ", fact: {" + fact.toStdString() + "}";
        };
        std::string text = replaced(soundActivity, "text: \"Larger pot\"}",
                                    "text: \"Larger pot\"" + line(easier) + "}");
        return replaced(text, "text: \"Smaller pot\"}",
                        "text: \"Smaller pot\"" + line(harder) + "}");
    }

    static const inline QString fall = "balloon_fall: {across_mm: 250, drop_mm: 1100}, says: 1.3";
};

void TestCatalogueFacts::aTrueFactIsRead_data()
{
    QTest::addColumn<QString>("fact");
    QTest::newRow("fall") << fall;
    QTest::newRow("push") << "balloon_push: {across_mm: 250, than_across_mm: 200}, says: 1.6";
    QTest::newRow("pull")
        << "band_pull: {grade: thin, strands: 2, rest_mm: 500, drawn_mm: 700}, says: 16";
    QTest::newRow("times") << "band_times: {rest_mm: 500, drawn_mm: 580, than_drawn_mm: 700}, "
                              "says: 0.5";
    QTest::newRow("tilt")
        << "tray_tilt: {ball: tight-paper, across_mm: 60, tray_mm: 400}, says: 27, "
           "up_to: 66";
}

void TestCatalogueFacts::aTrueFactIsRead()
{
    QFETCH(QString, fact);
    const auto loaded = loadActivity(withFacts(fact));
    QCOMPARE(shown(loaded.problems()), QString());
    QCOMPARE(loaded.activities().size(), std::size_t{1});
}

void TestCatalogueFacts::aFactIsKeptAsComputed()
{
    const auto loaded = loadActivity(withFacts(fall));
    QCOMPARE(loaded.activities().size(), std::size_t{1});
    const auto &fact = loaded.activities().begin()->easier.front().fact;
    QVERIFY(fact);
    QVERIFY(fact->kind == FactKind::BalloonFall);
    const auto seconds = grading::balloonFallSeconds({.acrossMm = 250}, 1100);
    QVERIFY(seconds);
    QCOMPARE(fact->low, *seconds);
    QCOMPARE(fact->high, *seconds);
}

void TestCatalogueFacts::aLineWithoutAFactHasNone()
{
    const auto loaded = loadActivity(soundActivity);
    QVERIFY(!loaded.activities().begin()->easier.front().fact);
}

void TestCatalogueFacts::aFactAMistakeOffIsNamed_data()
{
    QTest::addColumn<QString>("what");
    QTest::addColumn<QString>("with");
    QTest::addColumn<QString>("problem");
    const auto row = [](const char *name, const char *what, const char *with, const char *problem) {
        QTest::newRow(name) << what << with << QString(".") + problem;
    };
    row("another time", "1.3", "1.9", "says: says 1.9, but it comes to 1.3 seconds");
    row("no time", ", says: 1.3", "", "says: is missing");
    row("time as text", "1.3", "\"1.3\"", "says: must be a number above 0");
    row("no number", "1.3", ".nan", "says: must be a number above 0");
    row("below zero", "1.3", "-1.3", "says: must be a number above 0");
    row("a range of what is none", "1.3", "1.3, up_to: 2", "up_to: is not a field known here");
    row("a kind nobody knows", "balloon_fall", "balloon_rise",
        "fact: names nothing that can be computed; it may name: balloon_fall, balloon_push");
    row("two facts", "says:", "band_times: {}, says:", "fact: says two things at once");
    row("a kind without sizes", "{across_mm: 250, drop_mm: 1100}", "soon",
        "fact.balloon_fall: must be a group of named fields");
    row("a size missing", ", drop_mm: 1100", "", "balloon_fall.drop_mm: is missing");
    row("a size too many", "drop_mm: 1100", "drop_mm: 1100, wind: 3",
        "balloon_fall.wind: is not a field known here");
    row("centimetres", "across_mm: 250", "across_mm: 25",
        "balloon_fall.across_mm: a party balloon is 150 to 300 mm across");
    row("fuller than it is made for", "across_mm: 250", "across_mm: 310",
        "balloon_fall.across_mm: a party balloon is 150 to 300 mm across");
    row("a drop in metres", "drop_mm: 1100", "drop_mm: 1.1",
        "balloon_fall.drop_mm: must be 100 to 3000 mm");
    // safety.md RB-02: no more than twice its length for a child.
    row("a band drawn too far", fall.toLatin1(),
        "band_pull: {grade: thin, strands: 1, rest_mm: 500, drawn_mm: 1100}, says: 14",
        "band_pull.drawn_mm: a band is never drawn to more than twice its length");
    row("a grade nobody sells", fall.toLatin1(),
        "band_pull: {grade: red, strands: 1, rest_mm: 500, drawn_mm: 700}, says: 8",
        "band_pull.grade: \"red\" is not one of: extra-thin, thin");
    row("three strands", fall.toLatin1(),
        "band_pull: {grade: thin, strands: 3, rest_mm: 500, drawn_mm: 700}, says: 8",
        "band_pull.strands: must be 1 to 2");
    row("half a range", fall.toLatin1(),
        "tray_tilt: {ball: felt, across_mm: 30, tray_mm: 400}, says: 13.3", "up_to: is missing");
    row("a range too wide", fall.toLatin1(),
        "tray_tilt: {ball: felt, across_mm: 30, tray_mm: 400}, says: 13.3, up_to: 80",
        "up_to: says 80, but it comes to 52.9 mm");
    row("a fact that is text", "{balloon_fall", "soon, x: {balloon_fall", "fact: must be a group");
}

void TestCatalogueFacts::aFactAMistakeOffIsNamed()
{
    QFETCH(QString, what);
    QFETCH(QString, with);
    QFETCH(QString, problem);
    const std::string sound = withFacts(fall);
    const std::string text = replaced(sound, what.toStdString(), with.toStdString());
    QVERIFY2(!text.empty(), "the sample has no such words");
    const QString problems = shown(loadActivity(text).problems());
    const int line = lineAt(sound, sound.find("Larger pot"));
    const QString place = QString("activities/pebble-post.yaml:%1: easier[1]").arg(line);
    QVERIFY2(problems.contains(place) && problems.contains(problem), qPrintable(problems));
}

void TestCatalogueFacts::aTenthOffIsNear_data()
{
    QTest::addColumn<double>("share");
    QTest::addColumn<bool>("near");
    QTest::newRow("as computed") << 1.0 << true;
    QTest::newRow("9 % more") << 1.09 << true;
    QTest::newRow("9 % less") << 0.91 << true;
    QTest::newRow("11 % more") << 1.11 << false;
    QTest::newRow("11 % less") << 0.89 << false;
}

void TestCatalogueFacts::aTenthOffIsNear()
{
    QFETCH(double, share);
    QFETCH(bool, near);
    const auto seconds = grading::balloonFallSeconds({.acrossMm = 250}, 1100);
    QVERIFY(seconds);
    const QString fact = QString("balloon_fall: {across_mm: 250, drop_mm: 1100}, says: %1")
                             .arg(*seconds * share, 0, 'f', 4);
    QCOMPARE(loadActivity(withFacts(fact)).problems().empty(), near);
}

void TestCatalogueFacts::easierMustBeEasierThanHarder_data()
{
    QTest::addColumn<QString>("easier");
    QTest::addColumn<QString>("harder");
    QTest::newRow("a longer fall")
        << fall << "balloon_fall: {across_mm: 200, drop_mm: 1100}, says: 1.03";
    QTest::newRow("a weaker pull")
        << "band_times: {rest_mm: 500, drawn_mm: 580, than_drawn_mm: 700}, says: 0.5"
        << "band_times: {rest_mm: 500, drawn_mm: 750, than_drawn_mm: 700}, says: 1.15";
    QTest::newRow("a ball that stays longer")
        << "tray_tilt: {ball: loose-paper, across_mm: 60, tray_mm: 400}, says: 66, up_to: 149"
        << "tray_tilt: {ball: tight-paper, across_mm: 60, tray_mm: 400}, says: 27, up_to: 66";
}

void TestCatalogueFacts::easierMustBeEasierThanHarder()
{
    QFETCH(QString, easier);
    QFETCH(QString, harder);
    QCOMPARE(shown(loadActivity(withFacts(easier, harder)).problems()), QString());
    const QString wrong = "harder[1].fact: is no harder than what a line for easier says";
    QVERIFY(shown(loadActivity(withFacts(harder, easier)).problems()).contains(wrong));
    QVERIFY(shown(loadActivity(withFacts(easier, easier)).problems()).contains(wrong));
}

void TestCatalogueFacts::differentFactsAreNotCompared()
{
    const QString push = "balloon_push: {across_mm: 250, than_across_mm: 200}, says: 1.6";
    QCOMPARE(shown(loadActivity(withFacts(push, fall)).problems()), QString());
}

void TestCatalogueFacts::theShippedFactsAreOnTheirLines()
{
    const auto catalogue = shipped::catalogue();
    std::set<std::string> withFact;
    for (const Activity &activity : catalogue.activities()) {
        for (const auto *lines : {&activity.easier, &activity.harder}) {
            for (const Grading &line : *lines) {
                if (line.fact)
                    withFact.insert(activity.id.value);
            }
        }
    }
    // activities.md 2, rows A58, A59, A60: a balloon's size and a band's pull.
    for (const char *id : {"slow-sky-taps", "quiet-roll-buoy", "slow-oars"})
        QVERIFY2(withFact.contains(id), id);
}

QTEST_APPLESS_MAIN(TestCatalogueFacts)
#include "tst_catalogue_facts.moc"
