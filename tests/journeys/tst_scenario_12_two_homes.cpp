#include <QtTest>

#include "core/store/event_repository.h"

#include "tests/support/two_homes.h"

using namespace lidlark;
using namespace lidlark::test;

/// job.md scenario 12: one box, two homes, and in the second a baby of nine months.
class TestScenario12 : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<Phone> m_morven;
    std::unique_ptr<Phone> m_kirsty;
    std::unique_ptr<Phone> m_aaron;

private slots:
    void init()
    {
        m_morven = therapistWith({"Effie"});
        m_kirsty = std::make_unique<Phone>("Kirsty", store::Role::Parent, "h-effie-mum");
        m_aaron = std::make_unique<Phone>("Aaron", store::Role::Parent, "h-effie-dad");
        m_kirsty->clock.moveTo(islandTime(10, 18, 0)); // Sunday
        QVERIFY(m_kirsty->meet(*m_morven) > 0);
        QVERIFY(effiesBoxIs(*m_kirsty, "h-effie-mum", "at Mum's"));
        m_aaron->clock.moveTo(islandTime(11, 18, 0)); // Monday, no box in the bag
        QVERIFY(m_aaron->meet(*m_morven) > 0);
        QVERIFY(m_aaron->meet(*m_kirsty) > 0);
    }

    void aaronSeesWhereTheBoxIsWhoSaidSoAndWhen()
    {
        const auto family = effiesFamily(*m_aaron);
        QCOMPARE(family.place->words, std::string("at Mum's"));
        QCOMPARE(family.place->author, std::string("Kirsty"));
        QVERIFY(family.place->when.day == *dayFrom({2027, 1, 10}));
    }

    /// activities.md 2.1 and 1.4 for a nine-month-old in the room.
    void withoutTheBoxOnlyHouseholdPlayThatIsSafeForABaby()
    {
        const auto today = effiesMenu(*m_aaron);
        QCOMPARE(today.menu.offers.size(), std::size_t{3});
        QCOMPARE(unfitForABabyWithoutTheBox(today), std::string());
    }

    void onWednesdayTheSameBoxIsHereWithTheStricterGate()
    {
        m_aaron->clock.moveTo(islandTime(13, 17, 30));
        QVERIFY(effiesBoxIs(*m_aaron, "h-effie-dad", "at Dad's"));
        const auto atDads = effiesMenu(*m_aaron);
        const auto atMums = effiesMenu(*m_kirsty);
        QVERIFY(isAdmitted(atMums, "hidden-harbour-lights"));
        QVERIFY(!isAdmitted(atDads, "hidden-harbour-lights"));
        QVERIFY(isAdmitted(atDads, "slow-oars")); // the band is for Effie, and hides from nobody
    }

    void kirstyKnowsPlaceAndCountsButNotHowOftenAaronPlayed()
    {
        m_aaron->clock.moveTo(islandTime(13, 17, 30));
        QVERIFY(effiesBoxIs(*m_aaron, "h-effie-dad", "at Dad's"));
        for (int i = 0; i < 3; ++i)
            QVERIFY(effiePlays(*m_aaron, "slow-oars"));
        m_kirsty->clock.moveTo(islandTime(14, 9, 0));
        QVERIFY(m_kirsty->meet(*m_aaron) > 0);
        const auto family = effiesFamily(*m_kirsty);
        QCOMPARE(family.place->words, std::string("at Dad's"));
        QVERIFY(family.plays.empty());
        QVERIFY(family.outcomes.empty()); // "all back" leaves no trace in the shared lane
        const auto events = *store::EventRepository(m_kirsty->database).all();
        for (const journal::Event &event : events)
            QVERIFY(event.lane.scope != "h-effie-dad");
    }

    void kirstysLateAllBackDoesNotMoveTheBoxHome()
    {
        m_aaron->clock.moveTo(islandTime(13, 17, 30));
        QVERIFY(effiesBoxIs(*m_aaron, "h-effie-dad", "at Dad's"));
        m_kirsty->clock.moveTo(islandTime(13, 18, 0)); // offline, logging Sunday's play
        QVERIFY(effiePlays(*m_kirsty, "slow-oars"));
        (void)m_aaron->meet(*m_kirsty);
        (void)m_kirsty->meet(*m_aaron);
        QCOMPARE(effiesFamily(*m_aaron).place->place, std::string("h-effie-dad"));
        QCOMPARE(effiesFamily(*m_kirsty).place->place, std::string("h-effie-dad"));
    }

    void eachHomeHasItsOwnSheet()
    {
        QCOMPARE(effiesFamily(*m_aaron).sheet->pets, true);
        QCOMPARE(effiesFamily(*m_kirsty).sheet->pets, false);
        const usecase::Family atMums = effiesFamily(*m_kirsty);
        for (const child::Person &person : atMums.sheet->people)
            QVERIFY(person.alias != "Jamie");
    }
};

QTEST_APPLESS_MAIN(TestScenario12)
#include "tst_scenario_12_two_homes.moc"
