#pragma once

#include "core/rotation/plan_rules.h"
#include "tests/core/rotation/enumeration_oracle.h"

#include <algorithm>
#include <optional>
#include <set>
#include <vector>

namespace lidlark::rotation::oracle {

/// Whether the entries may stand together on a day, written from the rules one by one.
inline bool keepsDay(const MenuProblem &problem, const ChoiceRules &rules, const Set &set)
{
    const auto count = [&](bool Entry::*trait) {
        return std::ranges::count_if(
            set, [&](std::size_t entry) { return problem.entries[entry].*trait; });
    };
    int minutes = 0;
    std::multiset<int> families;
    std::vector<int> pieces(problem.stock.size(), 0);
    for (const std::size_t entry : set) {
        minutes += problem.entries[entry].minutes;
        families.insert(problem.entries[entry].family);
        for (const Need &need : problem.entries[entry].needs)
            pieces[static_cast<std::size_t>(need.item)] += need.pieces;
    }
    bool stocked = true;
    for (std::size_t item = 0; item < pieces.size(); ++item)
        stocked = stocked && pieces[item] <= problem.stock[item];
    const auto holds = [&](SideCondition one) { return rules.inForce.holds(one); };
    const bool apart = std::ranges::all_of(
        families, [&](int family) { return family == noFamily || families.count(family) == 1; });
    return stocked && minutes <= rules.minutes && set.size() == rules.offers &&
           count(&Entry::isHeldBack) <= static_cast<std::ptrdiff_t>(rules.heldBackMost) &&
           (!holds(SideCondition::OneNew) || count(&Entry::isNew) <= 1) &&
           (!holds(SideCondition::OneMess) || count(&Entry::isMessy) <= rules.messyMost) &&
           (!holds(SideCondition::KnownFriend) || count(&Entry::isKnownFriend) >= 1) &&
           (!holds(SideCondition::WithoutTable) || count(&Entry::isWithoutTable) >= 1) &&
           (!holds(SideCondition::Family) || apart);
}

inline Set together(const std::vector<Set> &days)
{
    Set all;
    for (const Set &day : days)
        all.insert(all.end(), day.begin(), day.end());
    return all;
}

/// Whether the days are a plan: each keeps its rules, no entry comes twice, what is pinned stands.
inline bool keepsPlan(const MenuProblem &problem, const PlanRules &rules,
                      const std::vector<Set> &days)
{
    const Set all = together(days);
    if (days.size() != rules.days.size() || std::set(all.begin(), all.end()).size() != all.size())
        return false;
    for (std::size_t day = 0; day < days.size(); ++day) {
        if (!keepsDay(problem, rules.days[day], days[day]) || !std::ranges::is_sorted(days[day]))
            return false;
        const Set pinned = day < rules.pinned.size() ? rules.pinned[day] : Set{};
        for (const std::size_t entry : pinned) {
            if (std::ranges::count(days[day], entry) != 1)
                return false;
        }
    }
    return true;
}

/// Calls @p visit with every plan, built day by day.
template <class Visit>
void forEachPlan(const MenuProblem &problem, const PlanRules &rules, std::vector<Set> &days,
                 const Visit &visit)
{
    if (days.size() == rules.days.size()) {
        if (keepsPlan(problem, rules, days))
            visit(days);
        return;
    }
    Set set;
    forEachSet(
        problem.entries.size(), rules.days[days.size()].offers,
        [&](const Set &day) {
            if (!keepsDay(problem, rules.days[days.size()], day))
                return;
            days.push_back(day);
            forEachPlan(problem, rules, days, visit);
            days.pop_back();
        },
        set);
}

/// The largest value of a plan, by looking at all of them; nothing: there is none.
inline std::optional<int> bestPlanByLooking(const MenuProblem &problem, const PlanRules &rules)
{
    std::optional<int> best;
    std::vector<Set> days;
    forEachPlan(problem, rules, days, [&](const std::vector<Set> &plan) {
        const int value = valueOf(problem, together(plan));
        best = std::max(best.value_or(value), value);
    });
    return best;
}

} // namespace lidlark::rotation::oracle
