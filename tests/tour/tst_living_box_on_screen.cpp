#include <QtTest>

#include <QTemporaryDir>
#include <QtQml/qqmlextensionplugin.h>

#include "mobile/bridge/appearance.h"
#include "mobile/bridge/sitting.h"
#include "tests/tour/listening_voice.h"
#include "tests/tour/meeting.h"

Q_IMPORT_QML_PLUGIN(Lidlark_AppPlugin)

using namespace lidlark;
using namespace lidlark::test;

/// Guards job.md scenarios 1, 4 and 12 and G4, G5, G8 and T8 on the real screens.
class TestLivingBoxOnScreen : public QObject
{
    Q_OBJECT

private:
    QTemporaryDir m_folder;
    std::unique_ptr<OpenApp> m_app;

    [[nodiscard]] Hand hand() const { return m_app->hand(); }
    [[nodiscard]] QString path(const char *name) const { return m_folder.filePath(text(name)); }
    QString newStore(const char *name, const std::string &child, const std::string &person,
                     const std::string &home) const
    {
        writeStore(path(name), child, person, home);
        return path(name);
    }
    void open(const QString &file, const char *clock,
              std::unique_ptr<mobile::Voice> voice = nullptr)
    {
        m_app.reset();
        m_app = std::make_unique<OpenApp>(file, clock, QString(), std::move(voice));
    }
    [[nodiscard]] store::ItemRow item(const char *id) const
    {
        const auto found = m_app->graph.household().boxItem({id});
        return found ? found->row : store::ItemRow{};
    }
    [[nodiscard]] QByteArray page() const { return hand().words().join(u'|').toUtf8(); }
    void goTo(const char *tab, const char *row)
    {
        QVERIFY2(hand().tap(text(tab)), page().constData());
        QVERIFY2(hand().tap(text(row)), page().constData());
    }
    /// From Today into a play and its exceptions.
    void playAndDiffer(const char *activity)
    {
        QVERIFY(hand().tap(text("Everything")));
        QVERIFY2(hand().tap(text(activity)), page().constData());
        QVERIFY(hand().tap(text("Stop here")));
        QVERIFY2(hand().tap(text("Something's different")), page().constData());
    }
    /// The offers of Today, and whether one needs this item.
    [[nodiscard]] int offersWith(const char *itemId) const
    {
        int offers = 0;
        for (const QString &name : hand().names().filter(text(". play "))) {
            for (const catalogue::Activity &activity : realCatalogue().activities()) {
                if (!name.startsWith(QString::fromStdString(activity.name)))
                    continue;
                for (const catalogue::ItemUse &use : activity.items)
                    offers += use.item.value == itemId ? 1 : 0;
            }
        }
        return offers;
    }
    void noteOneEyeUsedUp(const QString &file, const char *clock, const char *activity)
    {
        open(file, clock);
        playAndDiffer(activity);
        QVERIFY2(hand().tap(text("Stick-on eyes: used up")), page().constData());
        QVERIFY2(hand().tap(text("The rest is back")), page().constData());
        m_app.reset();
    }

private slots:
    void initTestCase()
    {
        wakeAccessibleTree();
        Hand::beQuick();
    }
    void cleanup() { m_app.reset(); }

    void twoAdultsOneEveningNoSignal_data()
    {
        QTest::addColumn<QByteArray>("answer");
        QTest::addColumn<int>("eyes");
        QTest::addColumn<QString>("said");
        QTest::newRow("two") << QByteArray("Two") << 4 << QStringLiteral("Gran says: two.");
        QTest::newRow("the same") << QByteArray("The same one") << 5
                                  << QStringLiteral("Gran says: the same one.");
    }
    /// Scenario 1: one question, put to one adult, in plain words; the other phone shows the
    /// answer.
    void twoAdultsOneEveningNoSignal()
    {
        QFETCH(QByteArray, answer);
        QFETCH(int, eyes);
        QFETCH(QString, said);
        const QString ruths = newStore("ruth", "Fin", "Ruth", "h-fin");
        const QString grans = newStore("gran", "Fin", "Gran", "h-fin");
        noteOneEyeUsedUp(ruths, "2027-01-11T18:10:00Z", "Hidden Harbour Lights");
        noteOneEyeUsedUp(grans, "2027-01-11T19:05:00Z", "Dough Forecast"); // her clock is fast
        letMeet(ruths, grans, "2027-01-11T20:00:00Z");

        open(ruths, "2027-01-11T20:05:00Z");
        QVERIFY(hand().tap(text("Box")));
        QVERIFY2(hand().reads(text("stick-on eyes, 4 or 5, which?")), page().constData());
        QVERIFY2(hand().reads(text("Gran is asked.")), page().constData());
        QVERIFY(hand().find(text("The same one")) == nullptr);

        open(grans, "2027-01-11T20:10:00Z");
        QVERIFY(hand().tap(text("Box")));
        QVERIFY2(hand().reads(text("Ruth and Gran each noted one stick-on eye used up this "
                                   "evening. Same one, or two?")),
                 page().constData());
        QVERIFY(hand().tap(QString::fromUtf8(answer)));
        QCOMPARE(item("eyes").low, eyes);
        QCOMPARE(item("eyes").high, eyes);
        QVERIFY(hand().find(text("The same one")) == nullptr);
        m_app.reset();
        letMeet(ruths, grans, "2027-01-11T20:15:00Z");

        open(ruths, "2027-01-11T20:20:00Z");
        QVERIFY(hand().tap(text("Box")));
        QCOMPARE(item("eyes").low, eyes);
        QVERIFY2(hand().reads(said), page().constData());
        QVERIFY(!hand().reads(text("A small piece may lie"))); // used up, not lost
    }

    /// Scenario 4: two choices; thrown away, another is asked for once and no dough is offered.
    void theDoughDriedOutAndIsThrownAway()
    {
        open(newStore("nuala", "Nuala", "Shona", "h-nuala"), "2027-01-14T18:00:00Z");
        playAndDiffer("Crumb Counter");
        QVERIFY(hand().tap(text("Dough: dried out")));
        QVERIFY2(hand().find(text("Try to rescue it")) != nullptr, page().constData());
        QVERIFY2(hand().reads(text("dogs and cats")), page().constData());
        QCOMPARE(item("dough").high, 1); // nothing is written before it is said
        QVERIFY(hand().tap(text("Throw it away")));
        QVERIFY2(hand().reads(text("Play with Nuala")), page().constData());
        QCOMPARE(item("dough").high, 0);
        QCOMPARE(item("dough").requests.size(), std::size_t{1});
        QCOMPARE(offersWith("dough"), 0);
        QVERIFY(!hand().names().filter(text(". play ")).isEmpty());
        QVERIFY(hand().tap(text("Box")));
        QVERIFY2(hand().reads(text("dough, none, asked for")), page().constData());
    }

    void driedDoughMayBeRescuedAndKeepsItsDate()
    {
        open(newStore("nuala", "Nuala", "Shona", "h-nuala"), "2027-01-14T18:00:00Z");
        goTo("Box", "dough, 1");
        QVERIFY2(hand().tap(text("Opened: 3 days ago")), page().constData());
        QVERIFY2(hand().tap(text("Back")), page().constData());
        QVERIFY(hand().tap(text("Today")));
        playAndDiffer("Crumb Counter");
        QVERIFY(hand().tap(text("Dough: dried out")));
        QVERIFY(hand().tap(text("Try to rescue it")));
        QVERIFY2(hand().reads(text("drops of water")), page().constData());
        QVERIFY(hand().tap(text("It is soft again")));
        QVERIFY2(hand().reads(text("Something's different")), page().constData());
        QCOMPARE(item("dough").high, 1);
        QVERIFY(item("dough").requests.empty());
        QCOMPARE(item("dough").care.pieces.size(), std::size_t{1});
        QCOMPARE(item("dough").care.pieces.front().opened, dayFrom({2027, 1, 11}));
    }

    /// Home-made dough: the family sets its own limit, and the page says the last day.
    void aFamilySetsItsOwnLimit()
    {
        open(newStore("nuala", "Nuala", "Shona", "h-nuala"), "2027-01-14T18:00:00Z");
        goTo("Box", "dough, 1");
        QVERIFY(hand().tap(text("Opened: yesterday")));
        QVERIFY2(hand().tap(text("Keeps: a week")), page().constData());
        QCOMPARE(item("dough").care.keepsDays, std::optional<int>(7));
        QVERIFY2(hand().reads(text("Opened yesterday. Good until Wednesday.")), page().constData());
        QVERIFY(hand().tap(text("Keeps: no limit")));
        QVERIFY(!item("dough").care.keepsDays.has_value());
    }

    /// Scenario 4: the new pot is counted in, and its opening date is empty until it is opened.
    void aNewPotIsNotOpened()
    {
        const QString store = newStore("nuala", "Nuala", "Shona", "h-nuala");
        open(store, "2027-01-14T18:00:00Z");
        goTo("Box", "dough, 1");
        QVERIFY(hand().tap(text("Opened: a week ago")));
        QVERIFY2(hand().tap(text("Something is gone")), page().constData());
        QVERIFY(hand().tap(text("What became of it?: dried out")));
        QVERIFY(hand().tap(text("Throw it away")));
        open(store, "2027-01-22T18:00:00Z");
        QVERIFY(hand().tap(text("Box")));
        goTo("What to ask for", "Dough: It has come");
        QVERIFY2(hand().tap(text("Dough: Put it in the box")), page().constData());
        QCOMPARE(item("dough").high, 1);
        QVERIFY(hand().tap(text("Back")));
        QVERIFY2(hand().tap(text("dough, 1")), page().constData());
        QVERIFY2(hand().reads(text("Not opened yet.")), page().constData());
    }

    /// G8: a count sets the truth; what differs is said plainly, and a small part that is missing
    /// is looked for.
    void aCountSaysWhatDiffers()
    {
        open(newStore("ruth", "Fin", "Ruth", "h-fin"), mondayEvening);
        goTo("Box", "Count it all");
        QVERIFY(hand().tap(text("One less: pegs")));
        QVERIFY(hand().tap(text("That's what is here")));
        QCOMPARE(item("pegs").low, 5);
        QVERIFY2(hand().reads(text("Pegs: 5 counted, 6 expected. One is missing.")),
                 page().constData());
    }

    void aSmallPartMissingAtACountIsLookedFor()
    {
        open(newStore("ruth", "Fin", "Ruth", "h-fin"), mondayEvening);
        goTo("Box", "Count it all");
        QVERIFY(hand().tap(text("One less: stick-on eyes")));
        QVERIFY(hand().tap(text("That's what is here")));
        QVERIFY2(hand().tap(text("A small piece may lie on the floor")), page().constData());
        QVERIFY2(hand().reads(text("One stick-on eye is missing.")), page().constData());
    }

    /// G8, C5: with the child, one by one; each touch is one more, said aloud.
    void aChildCountsOneByOne()
    {
        const auto said = std::make_shared<QStringList>();
        open(newStore("ruth", "Fin", "Ruth", "h-fin"), mondayEvening,
             std::make_unique<ListeningVoice>(said));
        m_app->graph.appearance().setCountAloud(true);
        goTo("Box", "Count it all");
        QVERIFY(hand().tap(text("One by one")));
        QVERIFY(!hand().find(text("Next"))->isEnabled());
        QVERIFY2(hand().tap(text("One more: ")), page().constData());
        QVERIFY(hand().tap(text("One more: ")));
        QCOMPARE(*said, QStringList({text("one"), text("two")}));
        QVERIFY2(hand().tap(text("Next")), page().constData());
        QVERIFY(!hand().find(text("Next"))->isEnabled()); // the next thing is not counted yet
        QVERIFY(hand().tap(text("It is here")));
        QVERIFY(hand().find(text("Next"))->isEnabled());
    }

    /// C5: pieces are counted aloud as they come home, only where it was asked for.
    void piecesAreCountedAloudAsTheyComeHome()
    {
        const auto said = std::make_shared<QStringList>();
        open(newStore("ruth", "Fin", "Ruth", "h-fin"), mondayEvening,
             std::make_unique<ListeningVoice>(said));
        QVERIFY(hand().tap(text("Everything")));
        QVERIFY(hand().tap(text("Hidden Harbour Lights")));
        QVERIFY(hand().tap(text("Stop here")));
        QVERIFY(hand().tap(text("Stick-on eyes:")));
        QVERIFY(said->isEmpty());
        m_app->graph.appearance().setCountAloud(true);
        for (int eye = 1; eye < 6; ++eye)
            QVERIFY(hand().tap(text("Stick-on eyes:")));
        QCOMPARE(*said, QStringList({text("two"), text("three"), text("four"), text("five"),
                                     text("six, all home")}));
    }

    /// G5: asked for twice is once; counting in raises the stock once.
    void aRequestIsAskedOnceAndCountedInOnce()
    {
        const QString store = newStore("ruth", "Fin", "Ruth", "h-fin");
        open(store, mondayEvening);
        goTo("Box", "Count it all");
        for (int eye = 0; eye < 4; ++eye)
            QVERIFY(hand().tap(text("One less: short crayons")));
        QVERIFY(hand().tap(text("That's what is here")));
        QVERIFY(hand().tap(text("Done")));
        goTo("What to ask for", "Short crayons: Ask for it");
        QCOMPARE(item("crayons").requests.size(), std::size_t{1});
        QVERIFY2(hand().reads(text("Asked for, says Ruth, today.")), page().constData());
        QVERIFY(hand().find(text("Short crayons: Ask for it")) == nullptr);
        const int before = item("crayons").high;
        QVERIFY(hand().tap(text("Short crayons: It has come")));
        QVERIFY(hand().tap(text("One less: Short crayons")));
        QVERIFY(hand().tap(text("Short crayons: Put it in the box")));
        QCOMPARE(item("crayons").high, before + 3);
        QVERIFY2(!item("crayons").requests.front().isOpen(), page().constData());
    }

    /// G5: the one who packs says how far it has come, and the family sees it.
    void theTherapistMovesARequestOn()
    {
        const QString ruths = newStore("ruth", "Fin", "Ruth", "h-fin");
        const QString morvens = newStore("morven", "Fin", "Morven", "h-fin");
        {
            auto database = store::Database::open(morvens.toStdString());
            auto device = **store::DeviceRepository(*database).device();
            device.role = store::Role::Therapist;
            QVERIFY(store::DeviceRepository(*database).setDevice(device).ok());
        }
        open(ruths, mondayEvening);
        goTo("Box", "stick-on eyes, 6");
        QVERIFY2(hand().tap(text("Stick-on eyes: Ask for more")), page().constData());
        m_app.reset();
        letMeet(ruths, morvens, "2027-01-12T09:00:00Z");
        open(morvens, "2027-01-12T09:05:00Z");
        goTo("Box", "What to ask for");
        QVERIFY2(hand().tap(text("Stick-on eyes: Seen")), page().constData());
        QVERIFY(hand().tap(text("Stick-on eyes: On its way")));
        QVERIFY(hand().find(text("Stick-on eyes: It has come")) == nullptr);
        m_app.reset();
        letMeet(ruths, morvens, "2027-01-12T09:10:00Z");
        open(ruths, "2027-01-12T18:00:00Z");
        QVERIFY(hand().tap(text("Box")));
        QVERIFY2(hand().reads(text("stick-on eyes, 6, on its way")), page().constData());
        QVERIFY(hand().tap(text("What to ask for")));
        QVERIFY2(hand().reads(text("On its way, says Morven, today.")), page().constData());
    }

    /// safety.md HY-01: what was in a mouth waits for a washing.
    void whatWasInAMouthIsWashed()
    {
        open(newStore("ruth", "Fin", "Ruth", "h-fin"), mondayEvening);
        goTo("Box", "pegs, 6");
        QVERIFY(hand().tap(text("It was in a mouth")));
        QVERIFY2(hand().reads(text("In a mouth this evening, says Ruth.")), page().constData());
        QVERIFY(hand().tap(text("Back")));
        QVERIFY2(hand().reads(text("pegs, 6, wash it")), page().constData());
        QVERIFY(hand().tap(text("pegs, 6")));
        QVERIFY(hand().tap(text("Washed")));
        QVERIFY(!item("pegs").care.mouthed);
        QVERIFY(hand().tap(text("Back")));
        QVERIFY2(!hand().reads(text("wash it")), page().constData());
    }

    /// G2: gone, noted outside a play; used up one week, it stands in the chart of the item.
    void somethingIsGoneAndComesBack()
    {
        open(newStore("ruth", "Fin", "Ruth", "h-fin"), mondayEvening);
        goTo("Box", "pegs, 6");
        QVERIFY(hand().tap(text("Something is gone")));
        QVERIFY(hand().tap(text("What became of it?: still in use")));
        QVERIFY(hand().tap(text("2")));
        QVERIFY(hand().tap(text("Note it")));
        QCOMPARE(item("pegs").low, 4);
        QCOMPARE(item("pegs").out, 2);
        QVERIFY2(hand().reads(text("2 are still in use.")), page().constData());
        QVERIFY(hand().tap(text("2 back in the box")));
        QCOMPARE(item("pegs").low, 6);
        QVERIFY(hand().tap(text("Something is gone")));
        QVERIFY(hand().tap(text("What became of it?: broken")));
        QVERIFY(hand().tap(text("yesterday")));
        QVERIFY(hand().tap(text("Note it")));
        QCOMPARE(item("pegs").low, 5);
        QVERIFY2(hand().reads(text("Pegs: 1 in the week of 4 January.")), page().constData());
    }

    /// Scenario 12: "not here" acts on this phone at once and over a restart; "box is here" ends
    /// it.
    void aBoxThatIsNotHere()
    {
        const QString store = newStore("ruth", "Fin", "Ruth", "h-fin");
        open(store, mondayEvening);
        goTo("Box", "Not here");
        const auto place = m_app->graph.household().family()->place;
        QVERIFY(place.has_value()); // the place itself is changed by "box is here" alone
        QCOMPARE(place->place, std::string("h-fin"));
        open(store, mondayEvening);
        QVERIFY(m_app->graph.sitting().boxNotHere());
        for (const char *needed : {"eyes", "dough", "pegs", "bands", "pompoms", "pieces"})
            QCOMPARE(offersWith(needed), 0);
        goTo("Box", "Box is here");
        QVERIFY(!m_app->graph.sitting().boxNotHere());
        QVERIFY2(hand().find(text("Not here")) != nullptr, page().constData());
    }
};

QTEST_MAIN(TestLivingBoxOnScreen)
#include "tst_living_box_on_screen.moc"
