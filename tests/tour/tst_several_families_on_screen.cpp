#include <QtTest>

#include <QDir>
#include <QTemporaryDir>
#include <QtQml/qqmlextensionplugin.h>

#include "core/store/event_repository.h"
#include "mobile/bridge/appearance.h"
#include "mobile/bridge/sitting.h"
#include "tests/tour/open_app.h"

Q_IMPORT_QML_PLUGIN(Lidlark_AppPlugin)

using namespace lidlark;
using namespace lidlark::test;

namespace {

/// Every row of every table of a store, as one text.
QString everythingIn(const QString &file)
{
    auto database = store::Database::openExisting(file.toStdString());
    QString all;
    QStringList tables;
    auto names = database->prepare("SELECT name FROM sqlite_schema WHERE type = 'table'");
    for (auto row = names->step(); row && *row; row = names->step())
        tables.append(QString::fromStdString(names->text(0)));
    for (const QString &table : std::as_const(tables)) {
        auto query = database->prepare("SELECT * FROM \"" + table.toStdString() + "\"");
        for (auto row = query->step(); row && *row; row = query->step()) {
            for (int column = 0; column < query->columns(); ++column)
                all += QString::fromStdString(query->text(column)) + u' ';
            all += u'\n';
        }
    }
    return all;
}

/// The events of a store, lane by lane.
std::vector<journal::Event> eventsIn(const QString &file)
{
    auto database = store::Database::openExisting(file.toStdString());
    return *store::EventRepository(*database).all();
}

int playsIn(const QString &file)
{
    const auto events = eventsIn(file);
    return static_cast<int>(std::ranges::count_if(events, [](const journal::Event &event) {
        return event.kind == journal::Kind::PlayStarted;
    }));
}

} // namespace

/// Guards several families on one phone (design.md 1: each box is a world of its own) on the real
/// screens: a childminder with Fin, Anya, whose brother must avoid latex, and Lewis, whose sister
/// is two.
class TestSeveralFamiliesOnScreen : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<QTemporaryDir> m_folder;
    QString m_fin;
    QString m_anya;
    QString m_lewis;
    std::unique_ptr<OpenApp> m_app;

    [[nodiscard]] Hand hand() const { return m_app->hand(); }
    [[nodiscard]] QByteArray page() const { return hand().words().join(u'|').toUtf8(); }
    void open(const char *clock = mondayEvening)
    {
        m_app.reset();
        m_app = std::make_unique<OpenApp>(m_fin, clock);
    }
    void closeApp() { m_app.reset(); }
    void look(const char *alias)
    {
        QVERIFY2(hand().tap(text(alias) + text("'s box")), page().constData());
    }
    /// "Bartek: latex" on Anya's home sheet.
    void bartekMustAvoidLatex()
    {
        open();
        look("Anya");
        QVERIFY(hand().tap(text("Crew")));
        QVERIFY(hand().tap(text("Home sheet")));
        QVERIFY(hand().tap(text("Yes: Must anyone here avoid latex")));
        closeApp();
    }
    void nobodyElseIsHere()
    {
        QVERIFY2(hand().tap(text("Who is here")), page().constData());
        QVERIFY(hand().tap(text("Nobody else")));
        QVERIFY(hand().tap(text("Right beside")));
        QVERIFY(hand().tap(text("That's")));
    }
    void begin(const char *activity)
    {
        QVERIFY(hand().tap(text("Everything")));
        QVERIFY2(hand().tap(text(activity)), page().constData());
        QVERIFY(m_app->graph.playInHand().active());
    }
    /// The activities offered on Today.
    [[nodiscard]] std::vector<const catalogue::Activity *> offers() const
    {
        std::vector<const catalogue::Activity *> offered;
        for (const QString &name : hand().names().filter(text(". play "))) {
            for (const catalogue::Activity &activity : realCatalogue().activities()) {
                if (name.startsWith(QString::fromStdString(activity.name)))
                    offered.push_back(&activity);
            }
        }
        return offered;
    }
    [[nodiscard]] QString whosePage() const
    {
        const auto *strip = m_app->window->findChild<QQuickItem *>(text("whosePage"));
        return strip != nullptr && strip->isVisible() ? strip->property("text").toString()
                                                      : QString();
    }

private slots:
    void initTestCase()
    {
        wakeAccessibleTree();
        Hand::beQuick();
    }
    void init()
    {
        m_folder = std::make_unique<QTemporaryDir>();
        m_fin = m_folder->filePath(text("home.lidlark"));
        m_anya = m_fin + text(".families/family-2.lidlark");
        m_lewis = m_fin + text(".families/family-3.lidlark");
        QVERIFY(QDir().mkpath(m_fin + text(".families")));
        writeStore(m_fin, "Fin", "Ruth", "h-fin");
        writeStore(m_anya, "Anya", "Marta", "h-anya");
        writeStore(m_lewis, "Lewis", "Catriona", "h-lewis");
    }
    void cleanup() { m_app.reset(); }

    void oneTapChangesChildAndFamily()
    {
        open();
        QVERIFY(hand().reads(text("Play with Fin")));
        look("Lewis");
        QVERIFY2(hand().reads(text("Play with Lewis")), page().constData());
        QVERIFY(hand().reads(text("Mirren")));
        QCOMPARE(m_app->graph.household().person(), text("Catriona"));
        look("Anya");
        QVERIFY(hand().reads(text("Play with Anya")));
        QVERIFY(!hand().reads(text("Mirren")));
    }

    void aStartOpensWhoWasOnTheTable()
    {
        open();
        look("Lewis");
        open();
        QVERIFY2(hand().reads(text("Play with Lewis")), page().constData());
    }

    /// A phone with one family shows nothing of all this.
    void oneFamilySeesNothingOfIt()
    {
        QVERIFY(QDir(m_fin + text(".families")).removeRecursively());
        open();
        QVERIFY(hand().find(text("Fin's box")) == nullptr);
        QVERIFY(hand().tap(text("Notebook")));
        QVERIFY(whosePage().isEmpty());
        QVERIFY(hand().tap(text("Crew")));
        QVERIFY(hand().find(text("Take off this phone")) == nullptr);
    }

    /// Each home's own gate: no latex at Anya's, nothing small at Lewis's while Mirren may be here.
    void eachHomeHasItsOwnGate()
    {
        bartekMustAvoidLatex();
        open();
        look("Anya");
        const auto anyas = offers();
        QVERIFY2(anyas.size() == 3, page().constData());
        for (const catalogue::Activity *activity : anyas)
            QVERIFY2(!activity->cautions.has(catalogue::Tag::Balloon), activity->name.c_str());
        QVERIFY(hand().reads(text("Some things must leave the house")));
        look("Lewis");
        QVERIFY(!hand().reads(text("Some things must leave the house")));
        QCOMPARE(offers().size(), std::size_t{3});
        for (const catalogue::Activity *activity : offers())
            QVERIFY2(!activity->cautions.has(catalogue::Tag::Small), activity->name.c_str());
        look("Fin");
        QVERIFY(!hand().reads(text("Some things must leave the house")));
    }

    /// Kite, room, filters: what was said with Fin is not said with Lewis.
    void theSittingIsEachOnesOwn()
    {
        open();
        nobodyElseIsHere();
        QVERIFY(hand().tap(text("Kite: not asked")));
        QVERIFY(hand().tap(text("Resting")));
        Hand::settle(700);
        QVERIFY(hand().hold(text("adult: hold")));
        QVERIFY(hand().tap(text("No table")));
        look("Lewis");
        const mobile::Sitting &sitting = m_app->graph.sitting();
        QVERIFY(sitting.kite().isEmpty());
        QVERIFY(!sitting.roomAnswered());
        QVERIFY(!sitting.filters().noTable);
        QVERIFY(!sitting.kiteToComplete());
        look("Fin");
        QCOMPARE(sitting.kite(), text("resting"));
        QVERIFY(sitting.roomAnswered());
        QVERIFY(sitting.filters().noTable);
    }

    /// In the middle of a play another child's box: the play waits, and is asked about on the way
    /// back.
    void aPlayWaitsWhileAnotherBoxIsOnTheTable()
    {
        open();
        nobodyElseIsHere();
        begin("Hidden Harbour Lights");
        QVERIFY(hand().tap(text("Next step")));
        QVERIFY2(hand().tap(text("Another child's box")), page().constData());
        QVERIFY(hand().reads(text("Hidden Harbour Lights waits with Fin.")));
        look("Lewis");
        QVERIFY2(hand().reads(text("Play with Lewis")), page().constData());
        QVERIFY(!m_app->graph.playInHand().active());
        QVERIFY(!hand().reads(text("Hidden Harbour Lights waits")));
        begin("Torn-Paper Coast");
        QVERIFY(hand().tap(text("Stop here")));
        QVERIFY(hand().tap(text("Another child's box")));
        look("Fin");
        QVERIFY2(hand().reads(text("You were playing Hidden Harbour Lights")), page().constData());
        QVERIFY(hand().tap(text("Go on playing")));
        QCOMPARE(m_app->graph.playInHand().step(), 1);
        QCOMPARE(m_app->graph.playInHand().activityId(), text("hidden-harbour-lights"));
        QVERIFY(hand().tap(text("Another child's box")));
        QVERIFY(hand().tap(text("Back to the play")));
        QCOMPARE(m_app->graph.playInHand().step(), 1);
        QVERIFY(hand().tap(text("Another child's box")));
        look("Lewis");
        QVERIFY(hand().reads(text("You were playing Torn-Paper Coast")));
        QVERIFY(hand().tap(text("Go on playing")));
        QVERIFY(m_app->graph.playInHand().puttingBack());
    }

    /// What is noticed after a play cannot land with a child whose play it was not.
    void whatIsNoticedStaysWithItsPlay()
    {
        open();
        begin("Slow Oars");
        QVERIFY(hand().tap(text("Stop here")));
        QVERIFY(hand().tap(text("All back in the box?")));
        QVERIFY(hand().tap(text("Done")));
        look("Lewis");
        QVERIFY(!m_app->graph.playInHand().notice(text("asked-again")));
    }

    /// Three plays, a kite, a lost piece: nothing of one family in another's rows, lane by lane.
    void nothingOfOneInAnothersRows()
    {
        const auto anyaBefore = eventsIn(m_anya);
        open();
        nobodyElseIsHere();
        QVERIFY(hand().tap(text("Kite: not asked")));
        QVERIFY(hand().tap(text("Flying steady")));
        Hand::settle(700);
        QVERIFY(hand().hold(text("adult: hold")));
        begin("Hidden Harbour Lights");
        QVERIFY(hand().tap(text("Another child's box")));
        look("Lewis");
        begin("Torn-Paper Coast");
        QVERIFY(hand().tap(text("Stop here")));
        QVERIFY(hand().tap(text("All back in the box?")));
        QVERIFY(hand().tap(text("Asked for it again")));
        QVERIFY(hand().tap(text("Done")));
        look("Fin");
        QVERIFY(hand().tap(text("Something's different")));
        QVERIFY(hand().tap(text("Stick-on eyes: lost")));
        QVERIFY(hand().tap(text("The rest is back")));
        closeApp();

        QCOMPARE(playsIn(m_fin), 1);
        QCOMPARE(playsIn(m_lewis), 1);
        QVERIFY(eventsIn(m_anya) == anyaBefore);
        for (const auto &[file, others] :
             {std::pair{m_fin, QStringList{text("h-lewis"), text("Lewis"), text("Catriona"),
                                           text("torn-paper"), text("Anya"), text("h-anya")}},
              std::pair{m_lewis, QStringList{text("h-fin"), text("Ruth"), text("hidden-harbour"),
                                             text("check-in"), text("Anya"), text("h-anya")}}}) {
            const QString rows = everythingIn(file);
            for (const QString &other : others)
                QVERIFY2(!rows.contains(other), qPrintable(file + text(" holds ") + other));
        }
        std::set<std::string> scopes;
        for (const journal::Event &event : eventsIn(m_lewis))
            scopes.insert(event.lane.scope);
        for (const journal::Event &event : eventsIn(m_fin))
            QVERIFY2(!scopes.contains(event.lane.scope), event.lane.scope.c_str());
    }

    /// A lost small piece is looked for in its own home.
    void aFloorNoteStaysAtHome()
    {
        open();
        look("Lewis");
        nobodyElseIsHere();
        begin("Hidden Harbour Lights");
        QVERIFY(hand().tap(text("Stop here")));
        for (int eye = 0; eye < 4; ++eye)
            QVERIFY(hand().tap(text("Stick-on eyes:")));
        QVERIFY(hand().tap(text("Something's different")));
        QVERIFY(hand().tap(text("Stick-on eyes: lost")));
        QVERIFY(hand().tap(text("2")));
        QVERIFY(hand().tap(text("The rest is back")));
        QVERIFY(hand().reads(text("Two stick-on eyes are missing.")));
        open(); // the phone died over it
        QVERIFY(hand().reads(text("Play with Lewis")));
        QVERIFY2(hand().reads(text("A small piece may lie on the floor")), page().constData());
        look("Fin");
        QVERIFY(!hand().reads(text("A small piece may lie on the floor")));
        look("Lewis");
        QVERIFY(hand().reads(text("A small piece may lie on the floor")));
    }

    /// The alias stands on top of each page of a child, or in its title.
    void whosePageItIs()
    {
        open();
        look("Lewis");
        const auto stands = [this] { return whosePage() == text("Lewis"); };
        for (const char *tab : {"Notebook", "Crew"}) {
            QVERIFY(hand().tap(text(tab)));
            QVERIFY2(stands(), tab);
        }
        for (const char *page : {"Home sheet", "Settings"}) {
            QVERIFY(hand().tap(text(page)));
            QVERIFY2(stands(), page);
            QVERIFY(hand().tap(text("Back")));
        }
        QVERIFY(hand().tap(text("Box")));
        QVERIFY(hand().reads(text("Lewis's box")));
        for (const char *page : {"pegs, 6", "What to ask for", "Count it all"}) {
            QVERIFY2(hand().tap(text(page)), page);
            QVERIFY2(stands(), page);
            QVERIFY(hand().tap(text("Back")));
        }
        QVERIFY(hand().tap(text("Today")));
        QVERIFY(hand().tap(text("The week ahead")));
        QVERIFY(stands());
        QVERIFY(hand().tap(text("Back")));
        QVERIFY(hand().tap(text("Who is here")));
        QVERIFY(stands());
        QVERIFY(hand().tap(text("That's")));
        QVERIFY(hand().tap(text("Kite: not asked")));
        QVERIFY(stands());
        QVERIFY(hand().tap(text("Clouds")));
        Hand::settle(700);
        QVERIFY(hand().hold(text("adult: hold")));
        QVERIFY(stands()); // for you, before you play
        QVERIFY(hand().tap(text("Choose something")));
        QVERIFY(hand().tap(text("Lewis chooses")));
        QVERIFY(stands());
        QVERIFY(hand().hold(text("adult: hold")));
        begin("Torn-Paper Coast");
        QVERIFY(stands());
        QVERIFY(hand().tap(text("Something is wrong")));
        QVERIFY(stands());
        QVERIFY(hand().tap(text("Back")));
        QVERIFY(hand().tap(text("Stop here")));
        QVERIFY(stands());
        QVERIFY(hand().tap(text("All back in the box?")));
        QVERIFY(stands());
    }

    /// Two Fins: the home's name stands beside the alias, on Today and over the pages.
    void twoOfOneAlias()
    {
        const QString other = m_fin + text(".families/family-4.lidlark");
        writeStore(other, "Fin", "Ada", "h-fin");
        open();
        QVERIFY2(hand().find(text("Fin, with Ada's box")) != nullptr, page().constData());
        QVERIFY(hand().find(text("Fin, with Ruth's box")) != nullptr);
        look("Fin, with Ada");
        QVERIFY(hand().reads(text("Play with Fin, with Ada")));
        QVERIFY(hand().tap(text("Notebook")));
        QCOMPARE(whosePage(), text("Fin, with Ada"));
    }

    /// From Crew, the same questions as at the first run, and a way back from each.
    void anotherFamilysBox()
    {
        open();
        QVERIFY(hand().tap(text("Crew")));
        QVERIFY(hand().tap(text("Another family's box")));
        QVERIFY(hand().tap(text("Back to the crew")));
        QVERIFY(hand().tap(text("Another family's box")));
        QVERIFY(hand().write(text("Whose box is it"), text("Kit")));
        QVERIFY(hand().tap(text("4")));
        QVERIFY(hand().tap(text("Go on")));
        QVERIFY(hand().write(text("What are you called"), text("Ada")));
        QVERIFY(hand().tap(text("One page back")));
        QVERIFY(hand().tap(text("Go on")));
        QVERIFY(hand().tap(text("Go on")));
        QVERIFY(hand().tap(text("Go on")));
        QVERIFY(hand().tap(text("Begin")));
        QVERIFY2(hand().reads(text("Play with Kit")), page().constData());
        QVERIFY(hand().find(text("Fin's box")) != nullptr);
        QCOMPARE(m_app->graph.household().person(), text("Ada"));
        closeApp();
        const QString kits = m_fin + text(".families/family-4.lidlark");
        QVERIFY(QFile::exists(kits));
        QVERIFY(!everythingIn(m_fin).contains(text("Kit")));
        QVERIFY(!everythingIn(kits).contains(text("Fin")));
    }

    /// Off the phone, and back; gone when the app is closed.
    void aFamilyIsTakenOffAndBroughtBack()
    {
        open();
        look("Lewis");
        const auto before = eventsIn(m_lewis);
        QVERIFY(hand().tap(text("Crew")));
        QVERIFY(hand().tap(text("Take off this phone: Lewis")));
        QVERIFY(hand().tap(text("Keep")));
        QVERIFY(hand().tap(text("Take off this phone: Lewis")));
        QVERIFY(hand().tap(text("Take off")));
        QVERIFY2(hand().reads(text("Off this phone: Lewis")), page().constData());
        QVERIFY(!QFile::exists(m_lewis));
        QVERIFY(m_app->graph.household().child() != text("Lewis"));
        QVERIFY(hand().tap(text("Bring it back: Lewis")));
        QVERIFY(QFile::exists(m_lewis));
        QVERIFY(eventsIn(m_lewis) == before);
        QVERIFY(hand().tap(text("Today")));
        look("Lewis");
        QVERIFY(hand().tap(text("Crew")));
        QVERIFY(hand().tap(text("Take off this phone: Lewis")));
        QVERIFY(hand().tap(text("Take off")));
        closeApp();
        const QStringList left = QDir(m_fin + text(".families")).entryList(QDir::Files);
        QCOMPARE(left, QStringList{text("family-2.lidlark")});
    }

    /// The phone keeps its own: also when the first family leaves it.
    void theFirstFamilyLeavesAndThePhoneStays()
    {
        open();
        QVERIFY(hand().tap(text("Crew")));
        QVERIFY(hand().tap(text("Settings")));
        QVERIFY(hand().tap(text("Nothing moves")));
        QVERIFY(hand().tap(text("Back")));
        QVERIFY(hand().tap(text("Take off this phone: Fin")));
        QVERIFY(hand().tap(text("Take off")));
        open();
        QVERIFY2(hand().reads(text("Play with Anya")), page().constData());
        QVERIFY(m_app->graph.appearance().reducedMotion());
        QVERIFY(!everythingIn(m_fin).contains(text("Ruth")));
    }

    /// How the phone shows things belongs to it, not to a family.
    void appearanceBelongsToThePhone()
    {
        open();
        look("Lewis");
        QVERIFY(hand().tap(text("Crew")));
        QVERIFY(hand().tap(text("Settings")));
        QVERIFY(hand().tap(text("Dark")));
        QVERIFY(hand().tap(text("Back")));
        QVERIFY(hand().tap(text("Today")));
        look("Anya");
        QCOMPARE(m_app->graph.appearance().scheme(), 1);
        closeApp();
        QVERIFY(everythingIn(m_fin).contains(text("\"scheme\":1")));
        QVERIFY(!everythingIn(m_lewis).contains(text("scheme")));
    }

    /// One plain line, and everybody else's box opens.
    void aForeignFileHurtsNobodyElse()
    {
        QFile photo(m_fin + text(".families/photo.lidlark"));
        QVERIFY(photo.open(QIODevice::WriteOnly));
        photo.write(QByteArray("\xff\xd8 not a store").repeated(300));
        photo.close();
        open();
        QVERIFY(hand().reads(text("Play with Fin")));
        look("Lewis");
        QVERIFY(hand().tap(text("Crew")));
        QVERIFY2(hand().reads(text("One family's file cannot be read: photo.lidlark.")),
                 page().constData());
    }

    /// Torn while the app is open: the box on the table stays there.
    void aFileTornMeanwhileLeavesTheOtherOnTheTable()
    {
        open();
        QFile lewis(m_lewis);
        QVERIFY(lewis.open(QIODevice::WriteOnly));
        lewis.write("torn");
        lewis.close();
        look("Lewis");
        QVERIFY2(hand().reads(text("damaged")), page().constData());
        QVERIFY(hand().reads(text("Play with Fin")));
        QCOMPARE(m_app->graph.household().person(), text("Ruth"));
    }

    /// The first store torn: the others are still there.
    void aTornFirstStoreLeavesTheOthers()
    {
        QFile fin(m_fin);
        QVERIFY(fin.open(QIODevice::WriteOnly));
        fin.write(QByteArray("torn ").repeated(1000));
        fin.close();
        open();
        QVERIFY2(hand().reads(text("Play with Anya")), page().constData());
        look("Lewis");
        QVERIFY(hand().reads(text("Play with Lewis")));
        QVERIFY(hand().tap(text("Crew")));
        QVERIFY(hand().reads(text("One family's file cannot be read: home.lidlark.")));
    }
};

QTEST_MAIN(TestSeveralFamiliesOnScreen)
#include "tst_several_families_on_screen.moc"
