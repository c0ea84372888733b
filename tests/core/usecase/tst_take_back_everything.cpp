#include <QtTest>

#include "core/store/recording.h"
#include "core/usecase/keep_box.h"
#include "core/usecase/play_activity.h"
#include "core/usecase/restock.h"
#include "core/usecase/set_up_home.h"

#include "second_thoughts.h"

#include <algorithm>
#include <functional>
#include <random>

using namespace lidlark;
using namespace lidlark::test;

namespace {

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

/// Guards events.md 1 for what is taken back: the rows are what the set of events says.
class TestTakeBackEverything : public QObject
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

QTEST_APPLESS_MAIN(TestTakeBackEverything)
#include "tst_take_back_everything.moc"
