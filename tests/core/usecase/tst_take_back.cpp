#include <QtTest>

#include "core/store/projector.h"
#include "core/store/recording.h"
#include "core/usecase/box_notes.h"
#include "core/usecase/gradings.h"
#include "core/usecase/keep_box.h"
#include "core/usecase/noted_today.h"
#include "core/usecase/play_activity.h"
#include "core/usecase/restock.h"
#include "core/usecase/search_floor.h"
#include "core/usecase/set_up_home.h"
#include "core/usecase/take_back.h"
#include "core/usecase/take_out.h"
#include "core/usecase/tend_item.h"

#include "tests/support/phone.h"

#include <algorithm>
#include <functional>
#include <random>

using namespace lidlark;
using namespace lidlark::test;
using journal::Kind;

namespace {

/// Ruth's phone with Fin's box, on an evening.
std::unique_ptr<Phone> ruthsPhone()
{
    auto morven = therapistWith({"Fin"});
    auto ruth = std::make_unique<Phone>("Ruth", store::Role::Parent, "h-fin");
    ruth->meet(*morven);
    return ruth;
}

std::vector<usecase::Noted> notedOn(Phone &phone, const std::string &author = {})
{
    usecase::Workplace workplace = phone.workplace();
    auto noted = usecase::notedToday(workplace, "Fin", author);
    return noted ? *std::move(noted) : std::vector<usecase::Noted>();
}

Outcome takeBackLast(Phone &phone, const std::string &author = {})
{
    usecase::Workplace workplace = phone.workplace();
    const auto last = usecase::lastNotedBy(workplace, "Fin", author);
    return last ? usecase::takeBack(workplace, {"Fin", author, *last}) : Outcome(last.error());
}

Outcome putInFirst(Phone &phone)
{
    usecase::Workplace workplace = phone.workplace();
    for (const usecase::Noted &one : notedOn(phone)) {
        if (one.takenBack)
            return usecase::putInAgain(workplace,
                                       {"Fin", {}, journal::identityOf(one.events.front())});
    }
    return Error{ErrorCode::NotFound, "anything taken back"};
}

bool matches(Phone &phone)
{
    const auto same = store::Projector(phone.database).matchesRefold();
    return same && *same;
}

usecase::Family familyOn(Phone &phone)
{
    usecase::Workplace workplace = phone.workplace();
    return *usecase::loadFamily(workplace, "Fin");
}

/// All that is kept, but for the journal and what only this phone knows of itself.
std::string rowsOf(Phone &phone)
{
    auto tables = phone.database.prepare(
        "SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT IN "
        "('event', 'local_state', 'device') ORDER BY name");
    std::string text;
    for (auto table = tables->step(); table && *table; table = tables->step()) {
        auto rows = phone.database.prepare("SELECT * FROM " + tables->text(0));
        for (auto row = rows->step(); row && *row; row = rows->step()) {
            text += tables->text(0);
            for (int column = 0; column < rows->columns(); ++column)
                text += '|' + rows->text(column);
            text += '\n';
        }
    }
    return text;
}

using Act = std::function<Outcome(usecase::Workplace &)>;

struct NamedAct {
    const char *name;
    Act act;
};

Day islandDay(int dayOfJanuary)
{
    return *dayFrom({2027, 1, dayOfJanuary});
}

usecase::Tending tending(const char *item)
{
    return {"Fin", {}, {item}};
}

/// Acts that need nothing before them.
std::vector<NamedAct> plainActs()
{
    return {
        {"gone",
         [](auto &w) {
             return usecase::noteGone(w, tending("pegs"), box::ExceptionKind::Lost, 2);
         }},
        {"found", [](auto &w) { return usecase::noteFound(w, "Fin", {}, {"pegs"}, 1); }},
        {"full count",
         [](auto &w) {
             return usecase::countBox(w, "Fin", {}, {{{"pegs"}, 5}, {{"eyes"}, 2}});
         }},
        {"opened",
         [](auto &w) {
             return usecase::noteOpened(w, tending("dough"), {"packed/0"}, islandDay(10));
         }},
        {"left open",
         [](auto &w) { return usecase::noteLeftOpen(w, tending("dough"), {"packed/0"}); }},
        {"looked over", [](auto &w) { return usecase::noteChecked(w, tending("pegs")); }},
        {"limit", [](auto &w) { return usecase::setKeepingLimit(w, tending("dough"), 3); }},
        {"in a mouth",
         [](auto &w) {
             return usecase::noteHygiene(w, tending("pegs"), box::HygieneMark::Mouthed);
         }},
        {"place", [](auto &w) { return usecase::sayPlace(w, "Fin", "school", "at school"); }},
        {"asked for", [](auto &w) { return usecase::askFor(w, "Fin", {}, {"eyes"}); }},
        {"a new thing asked for", [](auto &w) { return usecase::askFor(w, "Fin", {}, {"loops"}); }},
        {"counted in", [](auto &w) { return usecase::countIn(w, "Fin", {}, {"eyes"}, 4); }},
        {"thrown away", [](auto &w) { return usecase::throwAway(w, tending("dough")); }},
        {"mouths",
         [](auto &w) {
             return usecase::sayFact(w, {"h-fin"}, {"", "pets", "yes"});
         }},
        {"number",
         [](auto &w) {
             return usecase::sayFact(w, {"h-fin"}, {"", "emergency-number", "112"});
         }},
        {"begun",
         [](auto &w) {
             const auto play = usecase::startPlay(w, {"Fin", {"hidden-harbour-lights"}, {}, {}});
             return play ? Outcome(Done{}) : Outcome(play.error());
         }},
    };
}

} // namespace

class TestTakeBack : public QObject
{
    Q_OBJECT

private slots:
    void everyPlainActGoesAndComesAgain_data()
    {
        QTest::addColumn<int>("at");
        const auto acts = plainActs();
        for (std::size_t i = 0; i < acts.size(); ++i)
            QTest::newRow(acts[i].name) << static_cast<int>(i);
    }

    /// Taken back, the rows are what they were before; put in again, what they were after.
    void everyPlainActGoesAndComesAgain()
    {
        QFETCH(int, at);
        auto ruth = ruthsPhone();
        usecase::Workplace workplace = ruth->workplace();
        const std::string before = rowsOf(*ruth);
        const Outcome done = plainActs()[static_cast<std::size_t>(at)].act(workplace);
        QVERIFY2(done.ok(), done.ok() ? "" : done.error().detail.c_str());
        const std::string after = rowsOf(*ruth);
        QVERIFY(after != before);
        while (!notedOn(*ruth).empty() && takeBackLast(*ruth).ok()) {
        }
        QCOMPARE(rowsOf(*ruth), before);
        QVERIFY(matches(*ruth));
        while (putInFirst(*ruth).ok()) {
        }
        QCOMPARE(rowsOf(*ruth), after);
        QVERIFY(matches(*ruth));
    }

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

    /// events.md 1: an evening of acts and second thoughts, delivered in three orders, twice.
    void threeOrdersOfDeliveryGiveTheSameRows()
    {
        auto ruth = ruthsPhone();
        usecase::Workplace workplace = ruth->workplace();
        std::mt19937 random(20270111);
        const auto acts = plainActs();
        for (int turn = 0; turn < 60; ++turn) {
            ruth->clock.moveTo(ruth->clock.nowMs() + msPerMinute);
            if (turn % 3 == 1)
                (void)takeBackLast(*ruth);
            else if (turn % 7 == 2)
                (void)putInFirst(*ruth);
            else
                (void)acts[random() % acts.size()].act(workplace);
            QVERIFY(matches(*ruth));
        }
        auto events = *store::EventRepository(ruth->database).all();
        const std::string expected = rowsOf(*ruth);
        for (int order = 0; order < 3; ++order) {
            std::shuffle(events.begin(), events.end(), random);
            Phone other("Ruth", store::Role::Parent, "h-fin");
            for (int time = 0; time < 2; ++time) {
                for (const journal::Event &event : events) {
                    auto recording =
                        store::Recording::begin(other.database, other.device, other.clock);
                    QVERIFY(recording->receive(event).ok());
                    QVERIFY(recording->commit().ok());
                }
            }
            QCOMPARE(rowsOf(other), expected);
            QVERIFY(matches(other));
        }
    }
};

QTEST_APPLESS_MAIN(TestTakeBack)
#include "tst_take_back.moc"
