#include <QtTest>

#include <QTemporaryDir>
#include <QtQml/qqmlextensionplugin.h>

#include "mobile/bridge/appearance.h"
#include "mobile/bridge/sitting.h"
#include "tests/tour/open_app.h"

Q_IMPORT_QML_PLUGIN(Lidlark_AppPlugin)

using namespace lidlark;
using namespace lidlark::test;

/// Guards job.md scenario 9 through the real screens: Skye and Lorna at the ferry terminal on a
/// Wednesday, the box at home, the battery low.
class TestTravelOnScreen : public QObject
{
    Q_OBJECT

private:
    QTemporaryDir m_folder;
    std::unique_ptr<OpenApp> m_app;

    [[nodiscard]] Hand hand() const { return m_app->hand(); }
    /// The offers on screen, in their order, as the catalogue has them.
    [[nodiscard]] std::vector<const catalogue::Activity *> offers() const
    {
        std::vector<const catalogue::Activity *> offered;
        const auto menu = m_app->graph.sitting().menu();
        if (!menu)
            return offered;
        for (const rotation::Offer &offer : menu->menu.offers) {
            const auto &activity = offer.admitted.activity();
            if (hand().find(QString::fromStdString(activity.name)) != nullptr)
                offered.push_back(realCatalogue().activity(activity.id));
        }
        return offered;
    }

private slots:
    void initTestCase()
    {
        wakeAccessibleTree();
        Hand::beQuick();
    }
    void init()
    {
        m_app.reset();
        const QString file = m_folder.filePath(text("skye.lidlark"));
        writeStore(file, "Skye", "Lorna", "h-skye");
        m_app = std::make_unique<OpenApp>(file, "2027-01-13T11:00:00Z");
        QVERIFY2(hand().tap(text("Away from home")), qPrintable(hand().names().join(u'|')));
    }
    void cleanup() { m_app.reset(); }

    void oneTapLeavesOnlyWhatNeedsNoBoxQuietFirst()
    {
        const auto offered = offers();
        QCOMPARE(offered.size(), std::size_t{3});
        for (const catalogue::Activity *activity : offered)
            QVERIFY2(activity->noBox && !activity->usesBox(), activity->id.value.c_str());
        QCOMPARE(offered.front()->sound, catalogue::Sound::Quiet);
    }

    void thereIsNothingToPutBackAndTheEndIsOneWord()
    {
        QVERIFY(hand().tap(QString::fromStdString(offers().front()->name)));
        QVERIFY(m_app->graph.playInHand().active());
        QVERIFY(hand().tap(text("Stop here")));
        QVERIFY2(!hand().reads(text("All back")), qPrintable(hand().words().join(u'|')));
        QVERIFY(hand().find(text("Something's different")) == nullptr);
        QVERIFY(hand().tap(text("Done")));
        QVERIFY(!m_app->graph.playInHand().active());
        const auto family = m_app->graph.household().family();
        QCOMPARE(family->plays.size(), std::size_t{1});        // kept for the other phones
        QCOMPARE(family->place->place, std::string("h-skye")); // nobody was asked where the box is
    }

    /// Also on the smallest phone: found by scrolling, set by one tap, and that is all.
    void oneTapOnTheSmallestPhone()
    {
        m_app.reset();
        const QString file = m_folder.filePath(text("small.lidlark"));
        writeStore(file, "Skye", "Lorna", "h-skye");
        m_app = std::make_unique<OpenApp>(file, "2027-01-13T11:00:00Z");
        m_app->window->resize(320, 568);
        Hand::settle(300);
        const mobile::Sitting &sitting = m_app->graph.sitting();
        QVERIFY(hand().tap(text("Someone is ill")));
        QVERIFY(sitting.filters().someoneIsIll);
        QVERIFY(hand().reads(text("Play with Skye")));
        QVERIFY(hand().tap(text("Away from home")));
        QVERIFY(sitting.filters().awayFromHome);
        QVERIFY(hand().reads(text("Play with Skye")));
    }

    void fiveHoursBringMoreThanThree()
    {
        std::set<std::string> seen;
        for (int menu = 0; menu < 2; ++menu) {
            const auto offered = offers();
            QCOMPARE(offered.size(), std::size_t{3});
            for (const catalogue::Activity *activity : offered)
                QVERIFY2(seen.insert(activity->id.value).second, activity->id.value.c_str());
            QVERIFY(hand().tap(text("Three others")));
        }
    }

    void theBatteryIsSavedWithOneSwitch()
    {
        QVERIFY(hand().tap(text("Crew")));
        QVERIFY(hand().tap(text("Settings")));
        QVERIFY(hand().tap(text("Save the battery")));
        QCOMPARE(m_app->graph.appearance().shownScheme(), 1);
        QVERIFY(m_app->graph.appearance().still());
        QVERIFY(hand().tap(text("Save the battery")));
        QCOMPARE(m_app->graph.appearance().shownScheme(), 0);
    }
};

QTEST_MAIN(TestTravelOnScreen)
#include "tst_travel_on_screen.moc"
