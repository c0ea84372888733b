#include <QtTest>

#include "core/store/event_repository.h"
#include "core/usecase/keep_box.h"
#include "core/usecase/play_activity.h"
#include "core/usecase/search_floor.h"
#include "core/wording/caution_words.h"

#include "tests/support/phone.h"

using namespace lidlark;
using namespace lidlark::test;
using box::ExceptionKind;

namespace {

const ItemId balloon{"balloon"};
const ActivityId taps{"slow-sky-taps"};
const ActivityId buoy{"quiet-roll-buoy"};

const safety::Admitted *admittedIn(const usecase::TodayMenu &today, const ActivityId &activity)
{
    for (const safety::Admitted &admitted : today.gated.admitted) {
        if (admitted.activity().id == activity)
            return &admitted;
    }
    return nullptr;
}

} // namespace

/// job.md scenario 2: the balloon pops.
class TestScenario02 : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<Phone> m_morven;
    std::unique_ptr<Phone> m_struan;
    PlayId m_play;

    usecase::TodayMenu menu()
    {
        usecase::Workplace workplace = m_struan->workplace();
        usecase::MenuRequest request;
        request.child = "Rory";
        request.room.present.emplace();
        return *usecase::suggestToday(workplace, request);
    }

    /// What "All pieces found" and "Can't find a piece" write (mobile/play/burst_view_model.cpp).
    void burst(ExceptionKind kind)
    {
        usecase::Workplace workplace = m_struan->workplace();
        QVERIFY(usecase::nameExceptions(workplace, m_play, "Struan", {{balloon, kind, 1}}).ok());
    }

    usecase::FloorSearch search()
    {
        usecase::Workplace workplace = m_struan->workplace();
        const auto family = usecase::loadFamily(workplace, "Rory");
        return usecase::floorSearchOf(*family, realCatalogue(), *dayFrom({2027, 1, 12}));
    }

    void balloonEntriesAreHidden()
    {
        const auto today = menu();
        for (const safety::Admitted &admitted : today.gated.admitted)
            QVERIFY2(!admitted.cautions().has(catalogue::Tag::Balloon),
                     admitted.activity().id.value.c_str());
    }

private slots:
    void init()
    {
        m_morven = therapistWith({"Rory"});
        m_struan = std::make_unique<Phone>("Struan", store::Role::Parent, "h-rory");
        m_struan->clock.moveTo(islandTime(12, 17, 40)); // Tuesday
        QVERIFY(m_struan->meet(*m_morven) > 0);
        usecase::Workplace workplace = m_struan->workplace();
        m_play = *usecase::startPlay(workplace, {"Rory", taps, "Struan", std::nullopt});
    }

    /// "All found" => balloons 2; the burst one is not in the box, and nobody waits for it.
    void allFoundLeavesTwoAndNothingOnTheFloor()
    {
        burst(ExceptionKind::UsedUp);
        QCOMPARE(itemOf(*m_struan, "Rory", "balloon").low, 2);
        QCOMPARE(itemOf(*m_struan, "Rory", "balloon").high, 2);
        QVERIFY(search().missing.empty());
        usecase::Workplace workplace = m_struan->workplace();
        QVERIFY(usecase::putBack(workplace, m_play, "Struan", {}).ok());
        QCOMPARE(itemOf(*m_struan, "Rory", "balloon").high, 2); // the yes brings none back
    }

    /// Both entries stay, under the rule that an adult pumps (BL-02: never a child under eight).
    void bothEntriesStayAndAnAdultPumps()
    {
        burst(ExceptionKind::UsedUp);
        const auto today = menu();
        for (const ActivityId &activity : {taps, buoy}) {
            const safety::Admitted *admitted = admittedIn(today, activity);
            QVERIFY2(admitted != nullptr, activity.value.c_str());
            QCOMPARE(admitted->supervision(), catalogue::Supervision::Beside);
            bool adultPumps = false;
            for (const wording::Sentence &caution :
                 wording::cautionsFor(admitted->cautions(), admitted->activity()))
                adultPumps =
                    adultPumps || caution.english.text().starts_with("Only an adult pumps it up");
            QVERIFY(adultPumps);
        }
    }

    /// Trap: inviting Rory, who is five, to blow it up.
    void nobodyInvitesAChildToBlowItUp()
    {
        for (const ActivityId &id : {taps, buoy}) {
            const catalogue::Activity *activity = realCatalogue().activity(id);
            std::string words = activity->invite;
            for (const std::string &line : activity->say)
                words += ' ' + line;
            QVERIFY2(words.find("blow") == std::string::npos, words.c_str());
        }
    }

    void theNextOfferShowsSomethingSeated()
    {
        burst(ExceptionKind::UsedUp);
        usecase::Workplace workplace = m_struan->workplace();
        QVERIFY(usecase::putBack(workplace, m_play, "Struan", {}).ok());
        const auto today = menu();
        QCOMPARE(today.menu.offers.size(), std::size_t{3});
        QVERIFY(
            std::any_of(today.menu.offers.begin(), today.menu.offers.end(), [](const auto &offer) {
                const auto &positions = offer.admitted.activity().positions;
                return std::any_of(positions.begin(), positions.end(),
                                   [](catalogue::Position position) {
                                       return position == catalogue::Position::Chair ||
                                              position == catalogue::Position::Lap;
                                   });
            }));
    }

    /// "Can't find" => balloon entries hidden until checked, floor note kept; in any home.
    void aMissingPieceHidesBalloonsUntilTheFloorIsChecked()
    {
        burst(ExceptionKind::Lost);
        QVERIFY(search().balloon());
        QVERIFY(search().isUrgent());
        QCOMPARE(itemOf(*m_struan, "Rory", "balloon").high, 2);
        balloonEntriesAreHidden();
        m_struan->clock.moveTo(islandTime(13, 17, 40)); // tomorrow as well
        balloonEntriesAreHidden();
        usecase::Workplace workplace = m_struan->workplace();
        QVERIFY(usecase::checkFloor(workplace, "Rory", "Struan").ok());
        QVERIFY(search().missing.empty());
        QVERIFY(admittedIn(menu(), buoy) != nullptr);
        QCOMPARE(itemOf(*m_struan, "Rory", "balloon").high, 2);
    }

    /// Trap: every piece of it found does not make a balloon whole again.
    void piecesFoundLaterDoNotComeBackIntoTheBox()
    {
        burst(ExceptionKind::Lost);
        usecase::Workplace workplace = m_struan->workplace();
        QVERIFY(usecase::notePiecesFound(workplace, "Rory", "Struan", {{balloon, 1}}).ok());
        QVERIFY(search().missing.empty());
        QCOMPARE(itemOf(*m_struan, "Rory", "balloon").low, 2);
        QCOMPARE(itemOf(*m_struan, "Rory", "balloon").high, 2);
        QVERIFY(admittedIn(menu(), buoy) != nullptr);
        const auto family = usecase::loadFamily(workplace, "Rory");
        QCOMPARE(family->outcomes.front().exceptions.of(ExceptionKind::UsedUp), 1);
        QCOMPARE(family->outcomes.front().exceptions.of(ExceptionKind::Lost), 0);
    }

    /// Two bursts in two plays are looked for together, and found all or none.
    void twoBurstsAreClosedTogether()
    {
        burst(ExceptionKind::Lost);
        usecase::Workplace workplace = m_struan->workplace();
        QVERIFY(usecase::putBack(workplace, m_play, "Struan", {}).ok());
        m_play = *usecase::startPlay(workplace, {"Rory", buoy, "Struan", std::nullopt});
        burst(ExceptionKind::Lost);
        QCOMPARE(search().missing.front().pieces, 2);
        const auto some = usecase::notePiecesFound(workplace, "Rory", "Struan", {{balloon, 1}});
        QVERIFY(!some.ok());
        QVERIFY(some.error().code == ErrorCode::Invalid);
        QVERIFY(usecase::notePiecesFound(workplace, "Rory", "Struan", {{balloon, 2}}).ok());
        QVERIFY(search().missing.empty());
        QCOMPARE(itemOf(*m_struan, "Rory", "balloon").high, 1);
    }

    /// A whole balloon that a count missed: found in pieces, the count stands.
    void aBalloonMissingAtACountIsClosedWithoutComingBack()
    {
        usecase::Workplace workplace = m_struan->workplace();
        QVERIFY(usecase::countBox(workplace, "Rory", "Struan", {{balloon, 2}}).ok());
        QVERIFY(search().balloon());
        QVERIFY(usecase::notePiecesFound(workplace, "Rory", "Struan", {{balloon, 1}}).ok());
        QVERIFY(search().missing.empty());
        QCOMPARE(itemOf(*m_struan, "Rory", "balloon").high, 2);
    }

    /// No restock promise without the therapist's yes: nothing is asked for by itself.
    void nothingIsAskedForByItself()
    {
        burst(ExceptionKind::UsedUp);
        const auto events = store::EventRepository(m_struan->database).all();
        for (const journal::Event &event : *events)
            QVERIFY(event.kind != journal::Kind::Request);
    }
};

QTEST_APPLESS_MAIN(TestScenario02)
#include "tst_scenario_02_the_balloon_pops.moc"
