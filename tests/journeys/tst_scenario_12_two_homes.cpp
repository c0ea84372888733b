#include <QtTest>

#include "core/store/event_repository.h"
#include "core/usecase/keep_box.h"
#include "core/usecase/play_activity.h"

#include "tests/support/phone.h"

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

    usecase::TodayMenu menu(Phone &phone, const safety::Room &room = {})
    {
        usecase::Workplace workplace = phone.workplace();
        usecase::MenuRequest request;
        request.child = "Effie";
        request.room = room;
        return *usecase::suggestToday(workplace, request);
    }

    usecase::Family familyOn(Phone &phone)
    {
        usecase::Workplace workplace = phone.workplace();
        return *usecase::loadFamily(workplace, "Effie");
    }

private slots:
    void init()
    {
        m_morven = therapistWith({"Effie"});
        m_kirsty = std::make_unique<Phone>("Kirsty", store::Role::Parent, "h-effie-mum");
        m_aaron = std::make_unique<Phone>("Aaron", store::Role::Parent, "h-effie-dad");
        m_kirsty->clock.moveTo(islandTime(10, 18, 0)); // Sunday
        QVERIFY(m_kirsty->meet(*m_morven) > 0);
        usecase::Workplace workplace = m_kirsty->workplace();
        QVERIFY(usecase::sayPlace(workplace, "Effie", "h-effie-mum", "at Mum's").ok());
        m_aaron->clock.moveTo(islandTime(11, 18, 0)); // Monday, no box in the bag
        QVERIFY(m_aaron->meet(*m_morven) > 0);
        QVERIFY(m_aaron->meet(*m_kirsty) > 0);
    }

    void aaronSeesWhereTheBoxIsWhoSaidSoAndWhen()
    {
        const auto family = familyOn(*m_aaron);
        QCOMPARE(family.place->words, std::string("at Mum's"));
        QCOMPARE(family.place->author, std::string("Kirsty"));
        QVERIFY(family.place->when.day == *dayFrom({2027, 1, 10}));
    }

    /// activities.md 2.1 and 1.4 for a nine-month-old in the room.
    void withoutTheBoxOnlyHouseholdPlayThatIsSafeForABaby()
    {
        const auto today = menu(*m_aaron);
        QCOMPARE(today.menu.offers.size(), std::size_t{3});
        using enum catalogue::Tag;
        const catalogue::TagSet never{Small, Coin,  Balloon, Elastic, Foam,
                                      Foil,  Straw, Sticker, Cord,    Dough};
        for (const safety::Admitted &admitted : today.gated.admitted) {
            for (const catalogue::ItemUse &use : admitted.items()) // a towel for the band is fine
                QVERIFY2(use.source == catalogue::Source::Home, use.item.value.c_str());
            QVERIFY((admitted.cautions() & never).empty());
        }
    }

    void onWednesdayTheSameBoxIsHereWithTheStricterGate()
    {
        m_aaron->clock.moveTo(islandTime(13, 17, 30));
        usecase::Workplace workplace = m_aaron->workplace();
        QVERIFY(usecase::sayPlace(workplace, "Effie", "h-effie-dad", "at Dad's").ok());
        const auto atDads = menu(*m_aaron);
        const auto atMums = menu(*m_kirsty);
        const auto has = [](const usecase::TodayMenu &today, const char *id) {
            return std::any_of(
                today.gated.admitted.begin(), today.gated.admitted.end(),
                [id](const auto &admitted) { return admitted.activity().id.value == id; });
        };
        QVERIFY(has(atMums, "hidden-harbour-lights"));
        QVERIFY(!has(atDads, "hidden-harbour-lights"));
        QVERIFY(has(atDads, "slow-oars")); // the band is for Effie, and hides from nobody
    }

    void kirstyKnowsPlaceAndCountsButNotHowOftenAaronPlayed()
    {
        m_aaron->clock.moveTo(islandTime(13, 17, 30));
        usecase::Workplace workplace = m_aaron->workplace();
        QVERIFY(usecase::sayPlace(workplace, "Effie", "h-effie-dad", "at Dad's").ok());
        for (int i = 0; i < 3; ++i) {
            const auto play =
                usecase::startPlay(workplace, {"Effie", {"slow-oars"}, {}, std::nullopt});
            QVERIFY(usecase::putBack(workplace, *play, {}, {}).ok());
        }
        m_kirsty->clock.moveTo(islandTime(14, 9, 0));
        QVERIFY(m_kirsty->meet(*m_aaron) > 0);
        const auto family = familyOn(*m_kirsty);
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
        usecase::Workplace aarons = m_aaron->workplace();
        QVERIFY(usecase::sayPlace(aarons, "Effie", "h-effie-dad", "at Dad's").ok());
        m_kirsty->clock.moveTo(islandTime(13, 18, 0)); // offline, logging Sunday's play
        usecase::Workplace kirstys = m_kirsty->workplace();
        const auto play = usecase::startPlay(kirstys, {"Effie", {"slow-oars"}, {}, std::nullopt});
        QVERIFY(usecase::putBack(kirstys, *play, {}, {}).ok());
        (void)m_aaron->meet(*m_kirsty);
        (void)m_kirsty->meet(*m_aaron);
        QCOMPARE(familyOn(*m_aaron).place->place, std::string("h-effie-dad"));
        QCOMPARE(familyOn(*m_kirsty).place->place, std::string("h-effie-dad"));
    }

    void eachHomeHasItsOwnSheet()
    {
        QCOMPARE(familyOn(*m_aaron).sheet->pets, true);
        QCOMPARE(familyOn(*m_kirsty).sheet->pets, false);
        const usecase::Family atMums = familyOn(*m_kirsty);
        for (const child::Person &person : atMums.sheet->people)
            QVERIFY(person.alias != "Jamie");
    }
};

QTEST_APPLESS_MAIN(TestScenario12)
#include "tst_scenario_12_two_homes.moc"
