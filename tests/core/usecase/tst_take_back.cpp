#include <QtTest>

#include "core/usecase/box_notes.h"
#include "core/usecase/keep_box.h"
#include "core/usecase/play_activity.h"
#include "core/usecase/search_floor.h"
#include "core/usecase/set_up_home.h"

#include "second_thoughts.h"

using namespace lidlark;
using namespace lidlark::test;
using journal::Kind;

/// What an adult takes back, and what stays as it is.
class TestTakeBack : public QObject
{
    Q_OBJECT

private slots:
    /// A full count, or a piece thrown away and asked for, is one act with one way back.
    void oneTapIsTakenBackTogether()
    {
        auto ruth = ruthsPhone();
        usecase::Workplace workplace = ruth->workplace();
        QVERIFY(usecase::countBox(workplace, "Fin", {}, {{{"pegs"}, 5}, {{"eyes"}, 2}}).ok());
        QVERIFY(usecase::countBox(workplace, "Fin", {}, {{{"pegs"}, 4}, {{"eyes"}, 1}}).ok());
        QCOMPARE(notedOn(*ruth).size(), std::size_t{2});
        QVERIFY(takeBackLast(*ruth).ok());
        QCOMPARE(itemOf(*ruth, "Fin", "pegs").low, 5);
        QCOMPARE(itemOf(*ruth, "Fin", "eyes").low, 2);
        QVERIFY(usecase::throwAway(workplace, tending("dough")).ok());
        QVERIFY(takeBackLast(*ruth).ok());
        QVERIFY(!box::anyOpen(itemOf(*ruth, "Fin", "dough").requests));
        QCOMPARE(itemOf(*ruth, "Fin", "dough").low, 1);
    }

    /// Safety stays careful: the floor note opens again.
    void aFloorThatWasNotLookedOverAfterAll()
    {
        auto ruth = ruthsPhone();
        usecase::Workplace workplace = ruth->workplace();
        QVERIFY(usecase::noteGone(workplace, tending("eyes"), box::ExceptionKind::Lost, 2).ok());
        QCOMPARE(familyOn(*ruth).losses.size(), std::size_t{1});
        QVERIFY(usecase::checkFloor(workplace, "Fin", {}).ok());
        QVERIFY(familyOn(*ruth).losses.empty());
        QVERIFY(takeBackLast(*ruth).ok());
        QCOMPARE(familyOn(*ruth).losses.size(), std::size_t{1});
        QVERIFY(usecase::notePiecesFound(workplace, "Fin", {}, {{{"eyes"}, 2}}).ok());
        QVERIFY(familyOn(*ruth).losses.empty());
        QVERIFY(takeBackLast(*ruth).ok());
        QCOMPARE(familyOn(*ruth).losses.front().pieces, 2);
    }

    /// A mis-tapped "all back": the play is open again, and asks its one question.
    void allBackAfterAllNot()
    {
        auto ruth = ruthsPhone();
        usecase::Workplace workplace = ruth->workplace();
        const auto play = usecase::startPlay(workplace, {"Fin", {"torn-paper-coast"}, {}, {}});
        QVERIFY(play.ok());
        QVERIFY(usecase::putBack(workplace, *play, {}, {}).ok());
        QVERIFY(familyOn(*ruth).plays.front().ending.has_value());
        QVERIFY(takeBackLast(*ruth).ok());
        QVERIFY(!familyOn(*ruth).plays.front().ending.has_value());
        QVERIFY(takeBackLast(*ruth).ok());
        QVERIFY(familyOn(*ruth).plays.empty());
        QVERIFY(matches(*ruth));
    }

    /// A later word of the same register is the one with a way back; then the earlier one stands.
    void aReplacedWordIsNotOffered()
    {
        auto ruth = ruthsPhone();
        usecase::Workplace workplace = ruth->workplace();
        QVERIFY(usecase::sayPlace(workplace, "Fin", "school", "at school").ok());
        QVERIFY(usecase::sayPlace(workplace, "Fin", "away", "away").ok());
        QCOMPARE(notedOn(*ruth).size(), std::size_t{1});
        QVERIFY(takeBackLast(*ruth).ok());
        QCOMPARE(familyOn(*ruth).place->place, std::string("school"));
        QCOMPARE(notedOn(*ruth).size(), std::size_t{2});
        QVERIFY(takeBackLast(*ruth).ok());
        QCOMPARE(familyOn(*ruth).place->place, std::string("h-fin"));
    }

    /// events.md 8.2: an allergy said by mistake is corrected by who said it.
    void anAllergyIsTakenBackByItsAuthorAlone()
    {
        auto ruth = ruthsPhone();
        usecase::Workplace workplace = ruth->workplace();
        const auto avoided = [&] { return familyOn(*ruth).sheet->avoidances.latex; };
        const child::Answer before = avoided();
        QVERIFY(usecase::sayFact(workplace, {"h-fin"}, {"", "latex", "yes"}).ok());
        QCOMPARE(avoided(), child::Answer::Yes);
        std::string said;
        for (const usecase::Noted &one : notedOn(*ruth)) {
            if (one.last().kind == Kind::Fact)
                said = journal::identityOf(one.last());
        }
        const Outcome other = usecase::takeBack(workplace, {"Fin", "Gran", said});
        QCOMPARE(other.error().code, ErrorCode::Invalid);
        QCOMPARE(avoided(), child::Answer::Yes);
        QVERIFY(usecase::takeBack(workplace, {"Fin", {}, said}).ok());
        QCOMPARE(avoided(), before);
    }

    void whatOthersNotedIsShownAndNotTouched()
    {
        auto ruth = ruthsPhone();
        Phone gran("Gran", store::Role::Caregiver, "h-fin");
        QVERIFY(gran.meet(*ruth) > 0);
        usecase::Workplace hers = gran.workplace();
        QVERIFY(usecase::noteGone(hers, tending("pegs"), box::ExceptionKind::Lost, 1).ok());
        QVERIFY(ruth->meet(gran) > 0);
        const auto noted = notedOn(*ruth);
        QCOMPARE(noted.size(), std::size_t{1});
        QVERIFY(!noted.front().mine);
        usecase::Workplace workplace = ruth->workplace();
        const std::string event = journal::identityOf(noted.front().last());
        QCOMPARE(usecase::takeBack(workplace, {"Fin", {}, event}).error().code, ErrorCode::Invalid);
        QCOMPARE(usecase::lastNotedBy(workplace, "Fin", {}).error().code, ErrorCode::NotFound);
        QCOMPARE(itemOf(*ruth, "Fin", "pegs").low, itemOf(gran, "Fin", "pegs").low);
    }

    /// Two adults share one phone: what was logged there may be put right there.
    void onTheSamePhoneEitherAdultMay()
    {
        auto ruth = ruthsPhone();
        usecase::Workplace workplace = ruth->workplace();
        usecase::Tending grans = tending("pegs");
        grans.author = "Gran";
        QVERIFY(usecase::noteGone(workplace, grans, box::ExceptionKind::Lost, 1).ok());
        QVERIFY(takeBackLast(*ruth).ok());
        QCOMPARE(itemOf(*ruth, "Fin", "pegs").low, 6);
    }

    void theNextDayItStands()
    {
        auto ruth = ruthsPhone();
        usecase::Workplace workplace = ruth->workplace();
        QVERIFY(usecase::noteGone(workplace, tending("pegs"), box::ExceptionKind::Lost, 1).ok());
        const std::string event = journal::identityOf(notedOn(*ruth).front().last());
        ruth->clock.moveTo(islandTime(12, 9, 0));
        QVERIFY(notedOn(*ruth).empty());
        const Outcome late = usecase::takeBack(workplace, {"Fin", {}, event});
        QCOMPARE(late.error().code, ErrorCode::NotFound);
        QCOMPARE(itemOf(*ruth, "Fin", "pegs").low, 5);
    }

    void twiceIsToldAndChangesNothing()
    {
        auto ruth = ruthsPhone();
        usecase::Workplace workplace = ruth->workplace();
        QVERIFY(usecase::noteGone(workplace, tending("pegs"), box::ExceptionKind::Lost, 1).ok());
        const std::string event = journal::identityOf(notedOn(*ruth).front().last());
        const auto again = [&] { return usecase::putInAgain(workplace, {"Fin", {}, event}); };
        const auto back = [&] { return usecase::takeBack(workplace, {"Fin", {}, event}); };
        QCOMPARE(again().error().code, ErrorCode::Invalid);
        QVERIFY(back().ok());
        QCOMPARE(back().error().code, ErrorCode::Invalid);
        QVERIFY(again().ok());
        QVERIFY(back().ok());
        QCOMPARE(itemOf(*ruth, "Fin", "pegs").low, 6);
    }

    /// checkin.md 9: nothing that carries a time tells when a child showed a kite.
    void aCheckInIsNotToldOf()
    {
        auto ruth = ruthsPhone();
        usecase::Workplace workplace = ruth->workplace();
        QVERIFY(
            usecase::startPlay(workplace, {"Fin", {"torn-paper-coast"}, {}, checkin::Kite::Steady})
                .ok());
        for (const usecase::Noted &one : notedOn(*ruth))
            QVERIFY(one.last().kind != Kind::CheckIn);
    }

    /// What was taken back is in no view: the notebook's notes read what stands.
    void theNotebookReadsWhatStands()
    {
        auto ruth = ruthsPhone();
        usecase::Workplace workplace = ruth->workplace();
        QVERIFY(usecase::noteGone(workplace, tending("pegs"), box::ExceptionKind::Lost, 1).ok());
        QCOMPARE(usecase::boxNotesOf(workplace, familyOn(*ruth), islandDay(1))->size(),
                 std::size_t{1});
        QVERIFY(takeBackLast(*ruth).ok());
        QVERIFY(usecase::boxNotesOf(workplace, familyOn(*ruth), islandDay(1))->empty());
    }
};

QTEST_APPLESS_MAIN(TestTakeBack)
#include "tst_take_back.moc"
