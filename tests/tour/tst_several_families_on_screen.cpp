#include <QtQml/qqmlextensionplugin.h>

#include "mobile/bridge/appearance.h"
#include "mobile/bridge/sitting.h"
#include "tests/tour/childminder.h"

Q_IMPORT_QML_PLUGIN(Lidlark_AppPlugin)

using namespace lidlark;
using namespace lidlark::test;

/// Guards several families on one phone (design.md 1: each box is a world of its own) on the real
/// screens: nothing of one is seen, offered or written in another.
class TestSeveralFamiliesOnScreen : public Childminder
{
    Q_OBJECT

private slots:
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
        nobodyElseIsHere();
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
        QVERIFY(hand().tap(text("Done"))); // a play with things of the house alone
        QVERIFY(hand().tap(text("Done")));
        look("Lewis");
        QVERIFY(!m_app->graph.playInHand().notice(text("asked-again")));
    }

    /// Two plays, a kite, a lost piece: nothing of one family in another's rows, lane by lane.
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
        nobodyElseIsHere();
        begin("Torn-Paper Coast");
        QVERIFY(hand().tap(text("Stop here")));
        QVERIFY(hand().tap(text("Done"))); // a play with things of the house alone
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
                                           text("Anya"), text("h-anya")}},
              std::pair{m_lewis, QStringList{text("h-fin"), text("Ruth"), text("check-in"),
                                             text("Anya"), text("h-anya")}}}) {
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
        for (const char *page : {"one-piece pegs, 6", "What to ask for", "Count it all"}) {
            QVERIFY2(hand().tap(text(page)), this->page().constData());
            QVERIFY2(stands(), page);
            QVERIFY(hand().tap(text("Back")));
        }
        QVERIFY(hand().tap(text("Today")));
        QVERIFY(hand().tap(text("The week ahead")));
        QVERIFY(stands());
        QVERIFY(hand().tap(text("Back")));
        QVERIFY(hand().tap(text("Who is here")));
        QVERIFY(stands());
        QVERIFY(hand().tap(text("Nobody else")));
        QVERIFY(hand().tap(text("Right beside")));
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
};

QTEST_MAIN(TestSeveralFamiliesOnScreen)
#include "tst_several_families_on_screen.moc"
