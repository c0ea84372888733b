#include <QtTest>

#include "core/rotation/spread_days.h"
#include "core/rotation/week_plan.h"
#include "core/rotation/worth.h"
#include "tests/core/rotation/random_shelf.h"

#include <algorithm>
#include <set>

using namespace lidlark;
using namespace lidlark::rotation;
using namespace lidlark::rotation::samples;
using catalogue::Activity;
using catalogue::Skill;

namespace {

using Wish = DayAsked::Wish;

std::vector<DayAsked> allOpen()
{
    return std::vector<DayAsked>(planDays);
}

std::vector<std::size_t> plannedIn(const WeekPlan &plan)
{
    std::vector<std::size_t> all;
    for (const PlannedDay &day : plan.days)
        all.insert(all.end(), day.candidates.begin(), day.candidates.end());
    return all;
}

/// The value of a set of activities for a week, minute by minute: shares nothing with the solver
/// but the worth of one entry and the week's curve.
int valueOfSet(const std::vector<std::size_t> &set, std::span<const Candidate> candidates,
               const Question &question)
{
    std::map<Skill, int> minutes;
    int value = 0;
    for (const std::size_t place : set) {
        value += worthOf(candidates[place], question, candidates.size()).total();
        for (const Practice &practice : practiceOf(*candidates[place].activity))
            minutes[practice.skill] += practice.minutes;
    }
    for (const auto &[skill, total] : minutes)
        value += 2 * std::min(total, 5) + std::clamp(total - 5, 0, 10);
    return value;
}

/// The best value of any @p size of the candidates.
int bestBySearch(std::size_t size, std::span<const Candidate> candidates, const Question &question)
{
    std::vector<bool> in(candidates.size(), false);
    std::fill(in.begin(), in.begin() + static_cast<std::ptrdiff_t>(size), true);
    int best = -1'000'000;
    do {
        std::vector<std::size_t> set;
        for (std::size_t i = 0; i < in.size(); ++i) {
            if (in[i])
                set.push_back(i);
        }
        best = std::max(best, valueOfSet(set, candidates, question));
    } while (std::prev_permutation(in.begin(), in.end()));
    return best;
}

DayUse use(Skill family, int earliest = 0)
{
    const std::uint32_t bit = 1U << static_cast<unsigned>(family);
    return {bit, bit, earliest};
}

} // namespace

/// Guards the week plan (design.md 5) and its order (development.md g).
class TestWeekPlan : public QObject
{
    Q_OBJECT
private slots:
    void sevenDaysEachActivityAtMostOnce()
    {
        RandomShelf random(20, 3);
        Question question = questionFor(fin());
        question.records = random.records();
        const WeekPlan plan = planWeek(random.shelf().candidates(), question, allOpen(), 1);
        QCOMPARE(plan.days.size(), planDays);
        const auto all = plannedIn(plan);
        QCOMPARE(all.size(), planDays);
        QCOMPARE(std::set<std::size_t>(all.begin(), all.end()).size(), planDays);
        QVERIFY(plan.proven);
        QCOMPARE(plan.bound, plan.value);
    }

    void noOtherSevenAreWorthMore_data()
    {
        QTest::addColumn<int>("seed");
        for (int seed = 1; seed <= 12; ++seed)
            QTest::addRow("seed %d", seed) << seed;
    }

    // Source: enumeration of every choice of seven out of twelve.
    void noOtherSevenAreWorthMore()
    {
        QFETCH(int, seed);
        Shelf shelf;
        RandomShelf random(12, static_cast<std::uint32_t>(seed));
        for (std::size_t i = 0; i < 12; ++i) {
            shelf.add("entry" + std::to_string(i), [&](Activity &activity) {
                activity.skillsMain = random.shelf().at(i).skillsMain;
                activity.skillsAlso = random.shelf().at(i).skillsAlso;
                activity.minutes = random.shelf().at(i).minutes;
            });
        }
        const Question question = questionFor(fin());
        const auto candidates = shelf.candidates();
        const WeekPlan plan = planWeek(candidates, question, allOpen(), 1);
        Question morning = question;
        morning.part = PartOfDay::Morning;
        QCOMPARE(plan.value, bestBySearch(planDays, candidates, morning));
        QCOMPARE(plan.value, valueOfSet(plannedIn(plan), candidates, morning));
    }

    void whatIsKeptStandsAndIsNotPlannedAgain()
    {
        RandomShelf random(15, 8);
        const auto candidates = random.shelf().candidates();
        const Question question = questionFor(fin());
        std::vector<DayAsked> asked = allOpen();
        const WeekPlan before = planWeek(candidates, question, asked, 1);
        // An activity of another day is moved by hand to the third, and the fifth is left free.
        const std::size_t kept = before.days[0].candidates.front();
        asked[2] = {Wish::Keep, {kept}};
        asked[4] = {Wish::Free, {}};
        const WeekPlan plan = planWeek(candidates, question, asked, 1);
        QCOMPARE(plan.days[2].candidates, std::vector<std::size_t>{kept});
        QVERIFY(plan.days[4].candidates.empty());
        const auto all = plannedIn(plan);
        QCOMPARE(all.size(), planDays - 1);
        QCOMPARE(std::ranges::count(all, kept), std::ptrdiff_t{1});
    }

    void whatIsKeptCountsForTheWeeksCoverage()
    {
        // Three that practise one skill and one that practises another, all worth the same: beside
        // two of the first kept, the other is what the week lacks.
        Shelf shelf;
        for (const char *id : {"one", "two", "three"})
            shelf.add(id, [](Activity &a) { a.skillsMain = {Skill::Pin}; });
        shelf.add("other", [](Activity &a) { a.skillsMain = {Skill::Str}; });
        std::vector<DayAsked> asked(planDays, DayAsked{Wish::Free, {}});
        asked[0] = {Wish::Keep, {0}};
        asked[1] = {Wish::Keep, {1}};
        asked[2] = {};
        const WeekPlan plan = planWeek(shelf.candidates(), questionFor(fin()), asked, 1);
        QCOMPARE(plan.days[2].candidates, std::vector<std::size_t>{3});
    }

    void fewerActivitiesThanDaysFillTheFirstDays()
    {
        Shelf shelf;
        for (const char *id : {"one", "two", "three"})
            shelf.add(id);
        const WeekPlan plan = planWeek(shelf.candidates(), questionFor(fin()), allOpen(), 1);
        QCOMPARE(plannedIn(plan).size(), std::size_t{3});
        QVERIFY(!plan.days[2].candidates.empty());
        QVERIFY(plan.days[3].candidates.empty());
        const WeekPlan none = planWeek({}, questionFor(fin()), allOpen(), 1);
        QVERIFY(plannedIn(none).empty());
    }

    void severalADayDifferInFamilyWhereTheyCan()
    {
        RandomShelf random(40, 21);
        const auto candidates = random.shelf().candidates();
        Question question = questionFor(fin());
        for (int i = 0; i < 4; ++i)
            question.stock[{"item" + std::to_string(i)}] = 12;
        const WeekPlan plan = planWeek(candidates, question, allOpen(), 3);
        QCOMPARE(plannedIn(plan).size(), 3 * planDays);
        for (const PlannedDay &day : plan.days) {
            std::set<Skill> families;
            int messy = 0;
            for (const std::size_t place : day.candidates) {
                families.insert(candidates[place].activity->family());
                messy += candidates[place].activity->mess == 2 ? 1 : 0;
            }
            QCOMPARE(families.size(), day.candidates.size());
            QVERIFY(messy <= 1);
        }
    }

    void whatWasJustPlayedComesLaterInTheWeek()
    {
        RandomShelf random(7, 4); // all seven are planned, whatever they are worth
        const auto candidates = random.shelf().candidates();
        Question question = questionFor(fin());
        const ActivityId yesterday = random.shelf().at(3).id;
        question.records[yesterday] = playedOnce();
        question.records[yesterday].daysSincePlayed = 1;
        const WeekPlan plan = planWeek(candidates, question, allOpen(), 1);
        for (std::size_t day = 0; day < 2; ++day)
            QVERIFY(candidates[plan.days[day].candidates.front()].activity->id != yesterday);
    }

    void tomorrowsPlanIsTodaysWhereNothingHasHappened()
    {
        RandomShelf random(25, 11);
        const auto candidates = random.shelf().candidates();
        Question question = questionFor(fin());
        const auto today = plannedIn(planWeek(candidates, question, allOpen(), 1));
        question.today = question.today + 1;
        question.part = PartOfDay::Evening;
        QCOMPARE(plannedIn(planWeek(candidates, question, allOpen(), 1)), today);
    }

    // Source: development.md g, rule 5, "never two activities in a row with the same hand demand".
    void neighboursDoNotShareAFamilyWhereThatCanBeHad()
    {
        const std::vector<DayUse> planned{use(Skill::Pin), use(Skill::Pin), use(Skill::Str),
                                          use(Skill::Bil)};
        const std::vector<std::optional<DayUse>> days(4);
        const auto dayOf = spreadOver(planned, days);
        const auto apart = static_cast<int>(dayOf[0]) - static_cast<int>(dayOf[1]);
        QVERIFY(std::abs(apart) > 1);
    }

    void aDayThatStandsIsANeighbourToo()
    {
        const std::vector<DayUse> planned{use(Skill::Pin), use(Skill::Str)};
        const std::vector<std::optional<DayUse>> days{std::nullopt, use(Skill::Pin), DayUse{},
                                                      std::nullopt};
        QCOMPARE(spreadOver(planned, days), (std::vector<std::size_t>{3, 0}));
    }

    // Source: development.md g, rule 1, "leave at least one night between repeats".
    void tooSoonWeighsMoreThanANeighbour()
    {
        const std::vector<DayUse> planned{use(Skill::Pin, 2), use(Skill::Pin), use(Skill::Pin)};
        const std::vector<std::optional<DayUse>> days(3);
        QCOMPARE(spreadOver(planned, days).front(), std::size_t{2});
    }
};

QTEST_APPLESS_MAIN(TestWeekPlan)
#include "tst_week_plan.moc"
