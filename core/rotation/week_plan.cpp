#include "core/rotation/week_plan.h"

#include "core/rotation/coverage.h"
#include "core/rotation/familiarity.h"
#include "core/rotation/plan_search.h"
#include "core/rotation/pose_problem.h"
#include "core/rotation/spread_days.h"

#include <algorithm>
#include <cassert>

namespace lidlark::rotation {

namespace {

/// An entry may come again on the third day after it was played (activities.md 2.2, freshness).
constexpr int daysApart = 3;
/// Steps that one search may cost, and all searches of a week together. A family's week takes a
/// few hundred; 300 entries five a day were proven in 32,000, which took 0.07 s on the machine this
/// was built on. Measured, not derived.
constexpr std::int64_t mostSteps = 40'000;
constexpr std::int64_t mostStepsOfAll = 3 * mostSteps;
/// With these given way, families still differ and mess is still kept to one.
constexpr std::size_t atMostOnesInForce = 3;

/// A week is nobody's part of the day: it does not shuffle from one day to the next.
Question weekQuestion(const Question &question, std::span<const Candidate> candidates,
                      std::span<const DayAsked> asked)
{
    Question week = question;
    week.today = {};
    week.part = PartOfDay::Morning;
    week.pastBedtimeHour = false;
    week.kite.reset();
    week.minutes.reset();
    week.filters = {};
    week.playedToday.clear();
    week.without.clear();
    week.minutesThisWeek = {};
    for (auto &[activity, record] : week.records) {
        if (record.daysSincePlayed)
            record.daysSincePlayed = std::max(*record.daysSincePlayed, daysApart);
    }
    for (const DayAsked &day : asked) {
        for (const std::size_t kept : day.kept) {
            week.without.insert(candidates[kept].activity->id);
            for (const Practice &practice : practiceOf(*candidates[kept].activity))
                week.minutesThisWeek[static_cast<std::size_t>(practice.skill)] += practice.minutes;
        }
    }
    return week;
}

DayUse useOf(std::span<const std::size_t> places, std::span<const Candidate> candidates,
             const Question &question)
{
    DayUse use;
    for (const std::size_t place : places) {
        const catalogue::Activity &activity = *candidates[place].activity;
        use.families |= 1U << static_cast<unsigned>(activity.family());
        for (const catalogue::Skill skill : activity.skillsMain)
            use.skills |= 1U << static_cast<unsigned>(skill);
        const Record &record = recordOf(question, activity.id);
        if (record.daysSincePlayed)
            use.earliest = std::max(use.earliest, daysApart - *record.daysSincePlayed);
        if (question.playedToday.contains(activity.id))
            use.earliest = daysApart;
    }
    return use;
}

struct Found {
    std::vector<std::vector<std::size_t>> groups; ///< Places among the candidates.
    int value = 0;
    int bound = 0;
    bool proven = true;
};

/// What the searches of one week have cost.
struct Cost {
    std::int64_t steps = 0;
    std::int64_t nodes = 0;
};

std::optional<Found> planFor(std::size_t days, const PosedProblem &posed, const ChoiceRules &rules,
                             Cost &cost)
{
    const std::int64_t most = std::min(cost.steps + mostSteps, mostStepsOfAll);
    const auto isOver = [&cost, most] { return ++cost.steps > most; };
    const PlanAnswer answer =
        bestPlan(posed.problem, {std::vector<ChoiceRules>(days, rules), {}}, cost.nodes, isOver);
    const Plan *plan = std::get_if<Plan>(&answer);
    if (plan == nullptr)
        return std::nullopt;
    Found found{{}, plan->value, plan->bound, plan->proven};
    for (const std::vector<std::size_t> &day : plan->days) {
        std::vector<std::size_t> &group = found.groups.emplace_back();
        for (const std::size_t entry : day)
            group.push_back(posed.candidates[entry]);
    }
    return found;
}

/// As many days as can be filled; within that, as little as can be gives way.
Found bestFill(std::size_t open, const PosedProblem &posed, std::size_t perDay, Cost &cost)
{
    const std::size_t most = std::min(open, posed.problem.entries.size() / perDay);
    for (std::size_t days = most; days > 0; --days) {
        for (const std::size_t heldBack : {std::size_t{0}, perDay}) {
            for (const std::size_t givenWay : {atMostOnesInForce, sideConditionCount}) {
                const ChoiceRules rules{perDay, ConditionsInForce(givenWay), heldBack};
                if (auto found = planFor(days, posed, rules, cost))
                    return *std::move(found);
            }
        }
    }
    return {};
}

} // namespace

WeekPlan planWeek(std::span<const Candidate> candidates, const Question &question,
                  std::span<const DayAsked> asked, int perDay)
{
    assert(asked.size() == planDays && perDay >= 1 && perDay <= 3);
    const Question week = weekQuestion(question, candidates, asked);
    const PosedProblem posed = poseProblem(candidates, week);
    const auto open =
        static_cast<std::size_t>(std::ranges::count(asked, DayAsked::Wish::Open, &DayAsked::wish));
    WeekPlan plan;
    Cost cost;
    const Found found = bestFill(open, posed, static_cast<std::size_t>(perDay), cost);
    plan.nodes = cost.nodes;
    plan.value = found.value;
    plan.bound = found.bound;
    plan.proven = found.proven;
    std::vector<std::optional<DayUse>> uses;
    for (const DayAsked &day : asked) {
        plan.days.push_back({day.kept, day.wish});
        const bool isOpen = day.wish == DayAsked::Wish::Open;
        uses.push_back(isOpen ? std::nullopt
                              : std::optional(useOf(day.kept, candidates, question)));
    }
    std::vector<DayUse> planned;
    planned.reserve(found.groups.size());
    for (const std::vector<std::size_t> &group : found.groups)
        planned.push_back(useOf(group, candidates, question));
    const std::vector<std::size_t> dayOf = spreadOver(planned, uses);
    for (std::size_t i = 0; i < dayOf.size(); ++i)
        plan.days[dayOf[i]].candidates = found.groups[i];
    return plan;
}

} // namespace lidlark::rotation
