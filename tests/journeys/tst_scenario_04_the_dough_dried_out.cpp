#include <QtTest>

#include "core/store/event_repository.h"
#include "core/store/recording.h"
#include "core/usecase/box_items.h"
#include "core/usecase/play_activity.h"
#include "core/usecase/restock.h"
#include "core/usecase/tend_item.h"

#include "tests/support/phone.h"

#include <algorithm>

using namespace lidlark;
using namespace lidlark::test;

/// job.md scenario 4: Nuala's pot of dough, opened 4 January, left open since Tuesday.
class TestScenario04 : public QObject
{
    Q_OBJECT

private:
    const usecase::Tending m_dough{"Nuala", {}, {"dough"}};
    std::unique_ptr<Phone> m_morven;
    std::unique_ptr<Phone> m_shona;

    usecase::BoxItem dough()
    {
        usecase::Workplace workplace = m_shona->workplace();
        const auto family = usecase::loadFamily(workplace, "Nuala");
        const auto today = store::todayOf(m_shona->clock);
        for (const usecase::BoxItem &item :
             usecase::boxItemsOf(*family, realCatalogue(), today->day)) {
            if (item.row.item == m_dough.item)
                return item;
        }
        return {};
    }

    usecase::TodayMenu menu()
    {
        usecase::Workplace workplace = m_shona->workplace();
        usecase::MenuRequest request;
        request.child = "Nuala";
        return *usecase::suggestToday(workplace, request);
    }

    static bool usesDough(const catalogue::Activity &activity)
    {
        return std::any_of(activity.items.begin(), activity.items.end(),
                           [](const auto &use) { return use.item.value == "dough"; });
    }

    static int requestsIn(Phone &phone)
    {
        int requests = 0;
        const auto events = store::EventRepository(phone.database).all();
        for (const journal::Event &event : *events)
            requests += event.kind == journal::Kind::Request ? 1 : 0;
        return requests;
    }

private slots:
    void init()
    {
        m_morven = therapistWith({"Nuala"});
        m_shona = std::make_unique<Phone>("Shona", store::Role::Parent, "h-nuala");
        m_shona->clock.moveTo(islandTime(12, 18, 0)); // Tuesday
        QVERIFY(m_shona->meet(*m_morven) > 0);
        usecase::Workplace workplace = m_shona->workplace();
        QVERIFY(usecase::noteLeftOpen(workplace, m_dough, dough().freshness.inUse()->id).ok());
        m_shona->clock.moveTo(islandTime(14, 18, 0)); // Thursday
    }

    void thePotSaysThatItIsDrying()
    {
        QVERIFY(dough().freshness.useSoon);
        QCOMPARE(dough().freshness.inUse()->timesLeftOpen, 1);
        QVERIFY(dough().freshness.inUse()->opened == dayFrom({2027, 1, 4}));
        QVERIFY(dough().freshness.lookDue); // ten days without a look; the item asks for one a week
    }

    void aRescueKeepsItsDate()
    {
        QVERIFY(!realCatalogue().item({"dough"})->life.rescue.empty());
        usecase::Workplace workplace = m_shona->workplace();
        QVERIFY(usecase::noteChecked(workplace, m_dough).ok()); // it is soft again
        QVERIFY(dough().freshness.inUse()->opened == dayFrom({2027, 1, 4}));
        QVERIFY(!dough().freshness.lookDue);
        QCOMPARE(dough().row.low, 1);
    }

    void thrownAwayIsNoneLeftAndAskedForOnce()
    {
        usecase::Workplace workplace = m_shona->workplace();
        QVERIFY(usecase::throwAway(workplace, m_dough).ok());
        QCOMPARE(dough().row.high, 0);
        QVERIFY(dough().none);
        QCOMPARE(requestsIn(*m_shona), 1);
        QVERIFY(dough().request && dough().request->step == box::RequestStep::Asked);
        // Two taps are one request, and there is no second pot to throw away.
        QVERIFY(usecase::askFor(workplace, "Nuala", {}, {"dough"}).ok());
        QCOMPARE(requestsIn(*m_shona), 1);
        const Outcome again = usecase::throwAway(workplace, m_dough);
        QVERIFY(!again.ok() && again.error().code == ErrorCode::NotFound);
    }

    /// The same second: an offer with the same main skill and no dough; dough entries stay findable
    /// with the reason, and none of them is offered tonight.
    void theMenuGoesOnWithoutDough()
    {
        usecase::Workplace workplace = m_shona->workplace();
        QVERIFY(usecase::throwAway(workplace, m_dough).ok());
        const usecase::TodayMenu today = menu();
        QCOMPARE(today.menu.offers.size(), std::size_t{3});
        for (const rotation::Offer &offer : today.menu.offers)
            QVERIFY(!usesDough(offer.admitted.activity()));
        const catalogue::Activity &crumbs = *realCatalogue().activity({"crumb-counter"});
        const bool sameSkill = std::any_of(today.gated.admitted.begin(), today.gated.admitted.end(),
                                           [&crumbs](const safety::Admitted &admitted) {
                                               return admitted.activity().skillsMain.front() ==
                                                          crumbs.skillsMain.front() &&
                                                      !usesDough(admitted.activity());
                                           });
        QVERIFY(sameSkill);
        const auto held = std::find_if(
            today.gated.heldBack.begin(), today.gated.heldBack.end(),
            [](const auto &entry) { return entry.activity->id.value == "crumb-counter"; });
        QVERIFY(held != today.gated.heldBack.end());
        QVERIFY(std::any_of(held->reasons.begin(), held->reasons.end(), [](const auto &reason) {
            return reason.code == safety::ReasonCode::ItemUsedUp;
        }));
    }

    /// The new pot, counted in on 22 January, has no date until somebody opens it.
    void theNewPotHasNoDateUntilItIsOpened()
    {
        usecase::Workplace workplace = m_shona->workplace();
        QVERIFY(usecase::throwAway(workplace, m_dough).ok());
        (void)m_morven->meet(*m_shona);
        usecase::Workplace therapist = m_morven->workplace();
        m_morven->clock.moveTo(islandTime(20, 9, 0));
        for (const auto step :
             {box::RequestStep::Seen, box::RequestStep::Packed, box::RequestStep::OnItsWay})
            QVERIFY(usecase::moveRequest(therapist, "Nuala", {}, {"dough"}, step).ok());
        m_shona->clock.moveTo(islandTime(22, 16, 0));
        QVERIFY(m_shona->meet(*m_morven) > 0);
        QVERIFY(dough().request->step == box::RequestStep::OnItsWay);
        QVERIFY(usecase::countIn(workplace, "Nuala", {}, {"dough"}, 1).ok());
        QCOMPARE(dough().row.low, 1);
        QVERIFY(!dough().freshness.inUse());
        QVERIFY(!dough().freshness.useSoon);
        QVERIFY(!dough().request->isOpen());
        // The first play opens it.
        m_shona->clock.moveTo(islandTime(23, 16, 0));
        const auto play =
            usecase::startPlay(workplace, {"Nuala", {"crumb-counter"}, {}, std::nullopt});
        QVERIFY(play.ok());
        QVERIFY(dough().freshness.inUse()->opened == dayFrom({2027, 1, 23}));
        QCOMPARE(dough().freshness.inUse()->timesLeftOpen, 0);
    }

    /// From the put-back: "dried out" is said of the play, and throwing away is not said twice.
    void driedOutAtThePutBackIsOnePotGone()
    {
        usecase::Workplace workplace = m_shona->workplace();
        const auto play =
            usecase::startPlay(workplace, {"Nuala", {"crumb-counter"}, {}, std::nullopt});
        QVERIFY(usecase::putBack(workplace, *play, {},
                                 {{m_dough.item, box::ExceptionKind::DriedOut, 1}})
                    .ok());
        QCOMPARE(dough().row.high, 0);
        QVERIFY(usecase::askFor(workplace, "Nuala", {}, m_dough.item).ok());
        QVERIFY(usecase::askFor(workplace, "Nuala", {}, m_dough.item).ok());
        QCOMPARE(requestsIn(*m_shona), 1);
    }

    /// A pot that was in a mouth is thrown away; the next one is not set aside for it.
    void theNextPotIsNotTheMouthedOne()
    {
        usecase::Workplace workplace = m_shona->workplace();
        QVERIFY(usecase::noteHygiene(workplace, m_dough, box::HygieneMark::Mouthed).ok());
        QCOMPARE(dough().freshness.usable, 0);
        const Outcome washed = usecase::noteHygiene(workplace, m_dough, box::HygieneMark::Washed);
        QVERIFY(!washed.ok() && washed.error().code == ErrorCode::Invalid); // dough is not washed
        QVERIFY(usecase::throwAway(workplace, m_dough).ok());
        QVERIFY(usecase::countIn(workplace, "Nuala", {}, m_dough.item, 1).ok());
        QCOMPARE(dough().freshness.usable, 1);
    }
};

QTEST_APPLESS_MAIN(TestScenario04)
#include "tst_scenario_04_the_dough_dried_out.moc"
