#include <QtTest>

#include "core/usecase/play_activity.h"
#include "core/usecase/progress.h"

#include "tests/support/phone.h"

using namespace lidlark;
using namespace lidlark::test;

/// job.md scenario 9: Skye and Lorna at the terminal, the box at home, no signal.
class TestScenario09 : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<Phone> m_lorna;

    usecase::TodayMenu menu(std::set<ActivityId> without = {})
    {
        usecase::Workplace workplace = m_lorna->workplace();
        usecase::MenuRequest request;
        request.child = "Skye";
        request.filters.awayFromHome = true;
        request.without = std::move(without);
        return *usecase::suggestToday(workplace, request);
    }

private slots:
    void init()
    {
        auto morven = therapistWith({"Skye"});
        m_lorna = std::make_unique<Phone>("Lorna", store::Role::Parent, "h-skye");
        m_lorna->clock.moveTo(islandTime(13, 11, 0)); // Wednesday
        QVERIFY(m_lorna->meet(*morven) > 0);
    }

    void onlyEntriesThatNeedNoBoxQuietFirst()
    {
        const auto today = menu();
        QCOMPARE(today.menu.offers.size(), std::size_t{3});
        for (const rotation::Offer &offer : today.menu.offers) {
            QVERIFY(offer.admitted.activity().noBox);
            QVERIFY(!offer.admitted.activity().usesBox());
        }
        QCOMPARE(today.menu.offers.front().admitted.activity().sound, catalogue::Sound::Quiet);
        QVERIFY(!today.menu.offers.front().admitted.cautions().has(catalogue::Tag::Noise));
    }

    void thereIsMoreThanOneMenuForFiveHours()
    {
        std::set<ActivityId> seen;
        int menus = 0;
        for (; menus < 2; ++menus) {
            const auto today = menu(seen);
            QCOMPARE(today.menu.offers.size(), std::size_t{3});
            for (const rotation::Offer &offer : today.menu.offers)
                QVERIFY(seen.insert(offer.admitted.activity().id).second);
        }
    }

    void nothingIsAskedBackAndTheBoxStaysAtHome()
    {
        usecase::Workplace workplace = m_lorna->workplace();
        const auto before = itemOf(*m_lorna, "Skye", "eyes");
        const auto play =
            usecase::startPlay(workplace, {"Skye", {"window-tally"}, {}, std::nullopt});
        QVERIFY(play.ok());
        QVERIFY(usecase::putBack(workplace, *play, {}, {}).ok());
        const auto family = usecase::loadFamily(workplace, "Skye");
        QCOMPARE(family->place->place, std::string("h-skye"));
        QCOMPARE(family->plays.size(), std::size_t{1}); // kept for sync
        QVERIFY(family->outcomes.empty());
        QCOMPARE(itemOf(*m_lorna, "Skye", "eyes").low, before.low);
    }

    void theNamedFourAreThere_data()
    {
        QTest::addColumn<QByteArray>("id");
        for (const char *id :
             {"window-tally", "ticket-folds", "valley-fingers", "eyes-only-lookout"})
            QTest::newRow(id) << QByteArray(id);
    }

    void theNamedFourAreThere()
    {
        QFETCH(QByteArray, id);
        const auto today = menu();
        const auto admitted = std::find_if(
            today.gated.admitted.begin(), today.gated.admitted.end(),
            [&](const auto &entry) { return entry.activity().id.value == id.toStdString(); });
        QVERIFY(admitted != today.gated.admitted.end()); // Skye's home likes touch
        QVERIFY(admitted->activity().noBox);
    }
};

QTEST_APPLESS_MAIN(TestScenario09)
#include "tst_scenario_09_the_ferry_is_off.moc"
