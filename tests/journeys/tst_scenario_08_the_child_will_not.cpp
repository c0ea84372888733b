#include <QtTest>

#include "core/store/event_repository.h"
#include "core/usecase/check_in.h"
#include "core/usecase/play_activity.h"

#include "tests/support/phone.h"

using namespace lidlark;
using namespace lidlark::test;

namespace {

std::vector<std::string> idsOf(const rotation::Menu &menu)
{
    std::vector<std::string> ids;
    ids.reserve(menu.offers.size());
    for (const rotation::Offer &offer : menu.offers)
        ids.push_back(offer.admitted.activity().id.value);
    return ids;
}

} // namespace

/// job.md scenario 8: Oona, nearly nine, dislikes being asked.
class TestScenario08 : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<Phone> m_morven;
    std::unique_ptr<Phone> m_eoin;

    usecase::TodayMenu menu(std::optional<checkin::Kite> kite)
    {
        usecase::Workplace workplace = m_eoin->workplace();
        usecase::MenuRequest request;
        request.child = "Oona";
        request.kite = kite;
        return *usecase::suggestToday(workplace, request);
    }

private slots:
    void init()
    {
        m_morven = therapistWith({"Oona"});
        m_eoin = std::make_unique<Phone>("Eoin", store::Role::Parent, "h-oona");
        QVERIFY(m_eoin->meet(*m_morven) > 0);
    }

    void theBagGivesTheSameThreeAsNoCheckIn()
    {
        for (int day = 11; day < 14; ++day) {
            m_eoin->clock.moveTo(islandTime(day, 18, 0));
            const auto asked = idsOf(menu(checkin::Kite::Bag).menu);
            QCOMPARE(asked.size(), std::size_t{3});
            QVERIFY(asked == idsOf(menu(std::nullopt).menu));
        }
    }

    void nothingAboutRefusingReachesTheTherapist()
    {
        usecase::Workplace workplace = m_eoin->workplace();
        for (int day = 11; day < 14; ++day) {
            m_eoin->clock.moveTo(islandTime(day, 18, 0));
            QVERIFY(usecase::checkIn(workplace, "Oona", checkin::Kite::Bag, checkin::ShownBy::Child)
                        .ok());
        }
        m_morven->clock.moveTo(islandTime(14, 9, 0));
        (void)m_morven->meet(*m_eoin);
        const auto events = *store::EventRepository(m_morven->database).all();
        for (const journal::Event &event : events)
            QVERIFY(event.lane.kind != journal::LaneKind::CheckIns);
    }

    void offersFitAnEightYearOld()
    {
        for (const rotation::Offer &offer : menu(std::nullopt).menu.offers)
            QVERIFY(offer.admitted.activity().ageFloorMonths <= 106);
    }
};

QTEST_APPLESS_MAIN(TestScenario08)
#include "tst_scenario_08_the_child_will_not.moc"
