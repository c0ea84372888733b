#include <QtTest>

#include <QTemporaryDir>
#include <QtQml/qqmlextensionplugin.h>

#include "tests/support/own_samples.h"
#include "tests/tour/item_named.h"
#include "tests/tour/open_app.h"

Q_IMPORT_QML_PLUGIN(Lidlark_AppPlugin)

using namespace lidlark;
using namespace lidlark::test;

namespace {

constexpr const char *evening = "2027-01-11T19:30:00Z";

/// Morven's phone with the boxes of Fin and Lewis, bobbins in both, and on her desk the bobbins,
/// ready, and their play: sent to Fin's box, or with nothing written of how it comes home.
void writeMorvens(const QString &file, bool sent)
{
    QFile::remove(file);
    Phone morven("Morven", store::Role::Therapist, "");
    morven.database = *store::Database::open(file.toStdString());
    (void)store::DeviceRepository(morven.database).setDevice(morven.device);
    morven.clock.moveTo(islandTime(4, 10, 0));
    usecase::Workplace place = morven.workplace();
    for (const char *child : {"Fin", "Lewis"}) {
        usecase::island::Family family = familyOf(child);
        family.packed[{"own-bobbins"}] = 4;
        (void)usecase::issueBox(place, family);
    }
    (void)usecase::keepOwnItem(place, "own-bobbins", yamlOf(bobbins()));
    (void)usecase::publishOwnItem(place, realCatalogue(), "own-bobbins");
    if (sent) {
        (void)writeOwn(place);
        (void)usecase::sendToBox(place, "Fin", workbench::OwnSort::Activity, "own-bobbin-road");
        return;
    }
    catalogue::Activity road = bobbinRoad();
    road.putBack.clear();
    (void)usecase::keepOwnActivity(place, road.id.value, yamlOf(road));
}

} // namespace

/// Guards job.md T18 on the real screens: a therapist writes, is told what is still to do, sends,
/// and a family plays.
class TestOwnOnScreen : public QObject
{
    Q_OBJECT

private:
    QTemporaryDir m_folder;
    std::unique_ptr<OpenApp> m_app;

    [[nodiscard]] Hand hand() const { return m_app->hand(); }
    [[nodiscard]] QString fileOf(const char *name) const { return m_folder.filePath(text(name)); }
    [[nodiscard]] QByteArray page() const { return hand().words().join(u'|').toUtf8(); }

    void open(const char *name)
    {
        m_app.reset();
        m_app = std::make_unique<OpenApp>(fileOf(name), evening);
    }
    void goTo(const char *route)
    {
        QVERIFY(QMetaObject::invokeMethod(m_app->window->findChild<QObject *>(text("screens")),
                                          "go", Q_ARG(QString, text(route))));
        Hand::settle(300);
    }
    /// Each page as it looks, for eyes: where a folder is named.
    void look(const char *name) const
    {
        const QString folder = qEnvironmentVariable("LIDLARK_LOOK");
        if (folder.isEmpty())
            return;
        QVERIFY(hand().picture(folder + u'/' + text(name) + text(".png")));
    }
    void tap(const char *name) { QVERIFY2(hand().tap(text(name)), page().constData()); }
    void reads(const char *words) { QVERIFY2(hand().reads(text(words)), page().constData()); }

    /// A field with something else in it.
    void writeAnew(const char *field, const char *name, const char *words)
    {
        QQuickItem *item = itemOn(m_app->window, field);
        QVERIFY2(item != nullptr && item->setProperty("text", QString()), page().constData());
        QVERIFY2(hand().write(text(name), text(words)), page().constData());
    }

    /// What a parent's phone holds once it has met Morven's as it is in @p morvens.
    void takeHome(const char *morvens, const char *phone, const char *person,
                  const std::string &child) const
    {
        QFile::remove(fileOf(phone));
        auto from = store::Database::open(fileOf(morvens).toStdString());
        Phone parent(person, store::Role::Parent, "h-" + child);
        parent.database = *store::Database::open(fileOf(phone).toStdString());
        (void)store::DeviceRepository(parent.database).setDevice(parent.device);
        parent.clock.moveTo(islandTime(11, 19, 0));
        usecase::Workplace place = parent.workplace();
        const auto taken = usecase::takeEventsFrom(*from, place, [&](const journal::Lane &lane) {
            return (lane.kind == journal::LaneKind::Box && lane.scope == "b-" + child) ||
                   lane.scope == "h-" + child;
        });
        QVERIFY(taken && *taken > 0);
    }
    /// Whether it is among all that is offered, or held back, in that home.
    [[nodiscard]] bool isKnown(const char *phone, const char *activity)
    {
        open(phone);
        goTo("everything");
        return hand().write(text("Find by name"), text(activity)) && hand().find(text(activity));
    }

private slots:
    void initTestCase()
    {
        wakeAccessibleTree();
        Hand::beQuick();
        writeMorvens(fileOf("morven"), false);
    }
    void cleanup() { m_app.reset(); }

    void whatIsTypedIsThereAfterARestart()
    {
        open("morven");
        goTo("workbench");
        look("workbench");
        tap("Activities of your own");
        look("list");
        reads("A draft");
        tap("Write a new one");
        look("empty");
        QVERIFY2(hand().write(text("Its name"), text("Button Ferry")), page().constData());
        QVERIFY(hand().write(text("What the child hears"), text("Who steers the ferry?")));
        open("morven"); // as after an empty battery, without a way back from the page
        goTo("own-activities");
        tap("Button Ferry");
        reads("Who steers the ferry?");
        tap("Open: The steps");
        look("steps");
        tap("Open: Easier and harder");
        look("gradings");
        reads("Write at least one line that makes it easier.");
        tap("Throw this draft away");
        tap("Yes, throw it away");
        QVERIFY2(!hand().reads(text("Button Ferry")), page().constData());
    }

    void oneBeginsWithTheWordsOfOurs()
    {
        open("morven");
        goTo("own-activities");
        tap("Begin with one of ours");
        QVERIFY(hand().write(text("Find it by its name"), text("slow")));
        look("models");
        tap("Begin with the words of Slow Oars");
        tap("Open: What it is played with");
        look("things");
        reads("Long band");
        tap("Open: What to mind");
        look("cautions");
        reads("From what it is played with; these stay");
        tap("Throw this draft away");
        tap("Yes, throw it away");
    }

    void whatIsMissingIsSaidAndThenItIsSent()
    {
        open("morven");
        goTo("own-activities");
        tap("Bobbin Road");
        QVERIFY2(hand().find(text("Make it ready for boxes")) != nullptr, page().constData());
        tap("Open: What to say, and putting back");
        look("home-missing");
        tap("Write a line for each thing");
        Hand::settle(900); // it is looked over a moment after the last touch
        look("home");
        tap("Make it ready for boxes");
        look("boxes");
        reads("Ready for boxes.");
        reads("It fits.");
        reads("Held back there:");
        reads("Mirren");
        tap("Fin");
        tap("Send to the chosen boxes");
        look("sent");
        reads("In the box.");
        tap("Back; it is kept");
        reads("In the box of Fin");
    }

    void anOwnThingIsWrittenAndWhatIsTypedIsThereAfterARestart()
    {
        open("morven");
        goTo("shelf");
        look("shelf");
        tap("Things of your own");
        look("own-items");
        tap("Write a new thing");
        look("own-item-empty");
        QVERIFY2(hand().write(text("What they are called"), text("cork boats")),
                 page().constData());
        QVERIFY(hand().write(text("One of them"), text("cork boat")));
        tap("Choose another picture");
        look("own-item-pictures");
        QVERIFY(hand().write(text("Find it by its name"), text("pom")));
        tap("The picture of: Pom-poms");
        tap("Open: Its sizes");
        tap("One piece, as it is packed: A rod");
        QVERIFY(hand().write(text("One piece, as it is packed: Across"), text("28 mm")));
        QVERIFY(hand().write(text("One piece, as it is packed: Long"), text("24")));
        reads("Millimetres: a number from 0.1 to 2000.");
        reads("A size is still to come, so it counts for nothing yet.");
        look("own-item-wrong");
        open("morven"); // as after an empty battery, without a way back from the page
        goTo("own-items");
        reads("A draft");
        tap("Cork boats");
        tap("Open: Its sizes");
        reads("Millimetres: a number from 0.1 to 2000.");
        writeAnew("size-0", "One piece, as it is packed: Across", "28");
        // Source: 16 CFR 1501.4: 28 mm across and 24 mm long lies inside.
        reads("By its measures: it fits the small parts cylinder.");
        reads("From three years on");
        QVERIFY(!hand().find(text("See whom it affects"))->isEnabled());
        tap("Open: What is in it, and what to mind");
        reads("Say whether it holds anything that never goes into a box.");
        tap("None of these");
        look("own-item-materials");
        Hand::settle(900); // it is looked over a moment after the last touch
        tap("Open: Washing and keeping");
        look("own-item-keeping");
        tap("Open: Its place in the box");
        look("own-item-place");
        tap("See whom it affects");
        look("own-item-nobody");
        reads("Nothing changes for: Fin, Lewis.");
        tap("Keep it for boxes");
        look("own-item-ready");
        reads("Ready for boxes.");
        tap("Back; it is kept");
        reads("Ready, and sent to no box yet");
        goTo("shelf");
        reads("Cork boats. No price yet. None left"); // it is bought and counted as ours are
        goTo("own-activities");
        tap("Write a new one");
        tap("Open: What it is played with");
        tap("Put a thing in");
        tap("Put in: Cork boats. Small parts");
        reads("Cork boats");
        tap("Throw this draft away");
        tap("Yes, throw it away");
    }

    void whoIsAffectedIsNamedBeforeOneOfOursMeasuresOtherwise()
    {
        takeHome("morven", "before", "Catriona", "lewis");
        open("morven");
        goTo("shelf");
        QVERIFY(hand().write(text("Find by name"), text("one-piece pegs")));
        tap("One-piece pegs");
        look("supply-ours");
        tap("Yours measures otherwise");
        look("corrected-empty");
        // Source: 16 CFR 1501.4 (1.00 to 2.25 in deep): 40 mm long and 12 mm wide lies inside.
        writeAnew("size-0", "One piece, as it is packed: Long", "40");
        reads("By its measures: it fits the small parts cylinder.");
        tap("See whom it affects");
        look("affected");
        reads("Mirren is under three and is here: no small parts.");
        reads("In the box: 6 of them.");
        reads("No longer offered: ");
        QVERIFY(!hand().reads(text("Ready for boxes.")));
        tap("Keep it for boxes");
        look("affected-kept");
        reads("Ready for boxes.");
        tap("Send to the chosen boxes");
        look("affected-sent");
        reads("It counts in this box.");
        tap("Back; it is kept");
        reads("Yours measures otherwise");
        takeHome("morven", "after", "Catriona", "lewis");
        QVERIFY(isKnown("before", "Gusty Shirts"));
        look("offered-before");
        QVERIFY2(!isKnown("after", "Gusty Shirts"), page().constData());
        look("offered-after");
    }

    void theFamilyPlaysIt()
    {
        writeMorvens(fileOf("sent"), true);
        takeHome("sent", "ruth", "Ruth", "fin");
        open("ruth");
        look("today");
        goTo("everything");
        QVERIFY2(hand().write(text("Find by name"), text("Bobbin")), page().constData());
        look("everything");
        tap("Bobbin Road");
        look("play");
        reads("Written by Morven, not yet checked by a clinician.");
        reads("Which bobbin rolls the longest road?");
        tap("Next step");
        tap("Next step");
        look("play-last");
        tap("Put back");
        look("put-back");
        reads("Four bobbins: count them into the bag");
    }
};

QTEST_MAIN(TestOwnOnScreen)
#include "tst_own_on_screen.moc"
