#include <QtTest>

#include <QTemporaryDir>
#include <QtQml/qqmlextensionplugin.h>

#include "tests/support/own_samples.h"
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

    /// What Ruth's phone holds once it has met Morven's.
    void takeToRuths() const
    {
        writeMorvens(fileOf("sent"), true);
        QFile::remove(fileOf("ruth"));
        auto from = store::Database::open(fileOf("sent").toStdString());
        Phone ruth("Ruth", store::Role::Parent, "h-fin");
        ruth.database = *store::Database::open(fileOf("ruth").toStdString());
        (void)store::DeviceRepository(ruth.database).setDevice(ruth.device);
        ruth.clock.moveTo(islandTime(11, 19, 0));
        usecase::Workplace place = ruth.workplace();
        const auto taken = usecase::takeEventsFrom(*from, place, [](const journal::Lane &lane) {
            return (lane.kind == journal::LaneKind::Box && lane.scope == "b-fin") ||
                   lane.scope == "h-fin";
        });
        QVERIFY(taken && *taken > 0);
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

    void theFamilyPlaysIt()
    {
        takeToRuths();
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
