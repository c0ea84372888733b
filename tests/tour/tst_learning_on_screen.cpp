#include <QtTest>

#include <QTemporaryDir>
#include <QtQml/qqmlextensionplugin.h>

#include "core/usecase/check_in.h"
#include "mobile/bridge/sitting.h"
#include "tests/tour/open_app.h"

Q_IMPORT_QML_PLUGIN(Lidlark_AppPlugin)

using namespace lidlark;
using namespace lidlark::test;

/// Guards what the app learns of one child, through the real screens: how a play was graded, and
/// what was told before and after.
class TestLearningOnScreen : public QObject
{
    Q_OBJECT

private:
    QTemporaryDir m_folder;
    QString m_file;
    std::unique_ptr<OpenApp> m_app;

    [[nodiscard]] Hand hand() const { return m_app->hand(); }
    void openAt(const char *moment)
    {
        m_app.reset();
        m_app = std::make_unique<OpenApp>(m_file, moment);
    }
    void begin(const char *activity)
    {
        QVERIFY(hand().tap(text("Everything")));
        QVERIFY2(hand().tap(text(activity)), qPrintable(hand().names().join(u'|')));
        QVERIFY(m_app->graph.playInHand().active());
    }
    void putBack()
    {
        QVERIFY(hand().tap(text("Stop here")));
        QVERIFY(hand().tap(text("Done"))); // nothing came out of the box
        QVERIFY(hand().tap(text("Done"))); // and nothing was noticed
    }
    [[nodiscard]] play::Way way() const { return m_app->graph.playInHand().grading().way; }
    /// @p count pairs about Torn-Paper Coast, one a day, told by the child.
    void tellPairs(int count)
    {
        usecase::Workplace &workplace = m_app->graph.household().workplace();
        for (int i = 0; i < count; ++i) {
            const auto id = usecase::checkIn(workplace, "Fin", checkin::Kite::Whirling,
                                             checkin::ShownBy::Child);
            QVERIFY(id.ok());
            checkin::CheckIn entry;
            entry.id = *id;
            entry.child = {"c-fin"};
            entry.before = checkin::Kite::Whirling;
            const auto after = i == 0 ? checkin::Kite::Whirling : checkin::Kite::Steady;
            QVERIFY(usecase::checkInAfter(workplace, entry, after, {"torn-paper-coast"}).ok());
        }
        m_app->graph.household().announce();
    }

private slots:
    void initTestCase()
    {
        wakeAccessibleTree();
        Hand::beQuick();
    }
    void init()
    {
        m_file = m_folder.filePath(text("fin.lidlark"));
        m_app.reset();
        writeStore(m_file, "Fin", "Ruth", "h-fin");
        openAt(mondayEvening);
    }
    void cleanup() { m_app.reset(); }

    void theGradingUsedLastStandsFirstNextTime()
    {
        begin("Torn-Paper Coast");
        QCOMPARE(way(), play::Way::AsWritten);
        QVERIFY(hand().tap(text("Easier")));
        QCOMPARE(way(), play::Way::Easier);
        QVERIFY(hand().reads(text("This way it stands first next time.")));
        putBack();
        openAt("2027-01-12T18:25:00Z");
        begin("Torn-Paper Coast");
        QCOMPARE(way(), play::Way::Easier);
        QVERIFY(hand().reads(text("As you played it last.")));
    }

    void aDeadBatteryKeepsTheGradingThatWasChosen()
    {
        begin("Torn-Paper Coast");
        QVERIFY(hand().tap(text("Harder")));
        openAt("2027-01-11T18:30:00Z");
        QVERIFY(m_app->graph.playInHand().active());
        QCOMPARE(way(), play::Way::Harder);
    }

    void tappingOnLeadsThroughTheLinesAndBackToAsWritten()
    {
        begin("Torn-Paper Coast");
        const auto lines = realCatalogue().activity({"torn-paper-coast"})->harder.size();
        for (std::size_t i = 0; i < lines; ++i) {
            QVERIFY(hand().tap(text("Harder")));
            QCOMPARE(way(), play::Way::Harder);
        }
        QVERIFY(hand().tap(text("Harder")));
        QCOMPARE(way(), play::Way::AsWritten);
        QVERIFY(!hand().reads(text("stands first next time")));
    }

    // Source: checkin.md 13, check 7.
    void fivePairsSayNothingAndSixAreCounted()
    {
        tellPairs(5);
        QVERIFY(hand().tap(text("Notebook")));
        QVERIFY(!hand().reads(text("told us both")));
        tellPairs(1);
        Hand::settle();
        QVERIFY2(hand().reads(text("6 times Fin told us both. Towards steady: 4. No change: 2.")),
                 qPrintable(hand().words().join(u'|')));
        QVERIFY(hand().reads(text("That is a small number")));
        QVERIFY(!hand().reads(text("%")));
    }

    // Source: checkin.md 9, "one tap removes one entry or all, on every paired device".
    void everyKiteIsForgottenForGood()
    {
        tellPairs(6);
        QVERIFY(hand().tap(text("Crew")));
        QVERIFY(hand().tap(text("Settings")));
        QVERIFY(hand().tap(text("Forget every kite Fin has shown")));
        QCOMPARE(m_app->graph.household().family()->checkIns.size(), std::size_t{6});
        QVERIFY(hand().tap(text("Keep them")));
        QVERIFY(hand().tap(text("Forget every kite Fin has shown")));
        QVERIFY(hand().tap(text("Forget them")));
        QVERIFY(m_app->graph.household().family()->checkIns.empty());
        auto query = m_app->graph.household().workplace().database.prepare(
            "SELECT count(*) FROM event WHERE fields LIKE '%whirling%'");
        QVERIFY(*query->step());
        QCOMPARE(query->number(0), std::int64_t{0});
    }

    // Source: checkin.md 13, check 4.
    void turnedOffTheCountsAreGoneToo()
    {
        tellPairs(6);
        m_app->graph.sitting().setKiteOff(true);
        QVERIFY(hand().tap(text("Notebook")));
        QVERIFY(!hand().reads(text("told us both")));
        QVERIFY(!hand().reads(text("kite")));
    }
};

QTEST_MAIN(TestLearningOnScreen)
#include "tst_learning_on_screen.moc"
