#pragma once

#include "core/rotation/plan_rules.h"

#include <cstdint>
#include <functional>
#include <optional>
#include <variant>
#include <vector>

namespace lidlark::rotation {

/// What stands on each day, and how good that is.
struct Plan {
    std::vector<std::vector<std::size_t>> days; ///< Entries, ascending on each day.
    int value = 0;                              ///< Tenths.
    int bound = 0;                              ///< Tenths: no plan is worth more.
    bool proven = true;                         ///< The value is the bound.
};

/// Why there is no plan.
enum class NoPlan {
    Impossible, ///< No plan keeps to the rules: proven.
    NotFound    ///< None was found in time.
};

using PlanAnswer = std::variant<Plan, NoPlan>;

/// The best plan: exactly `offers` entries on each day, no entry twice, every day within its rules
/// and the stock, with the largest sum of worths plus the gain of each curve of the minutes of all
/// days together. Never half filled; never worth less than filling the days greedily, day by day or
/// all at once, where that gets through. How it is searched and why its bound holds:
/// plan_branching.h, plan_prices.h, horizon_limits.h. Whole numbers only: the same problem gives
/// the same plan on every device, stopped early or not, as long as isOver depends on nothing else
/// than how often it was asked.
/// @pre the slopes of the curves are not below zero. Numbers within the ranges of instance.cpp do
/// not overflow. What is pinned and breaks a rule of its day, or is pinned twice, makes it
/// Impossible.
/// @param nodes search nodes visited are added here.
/// @param isOver asked often; once it says yes the search ends with the best plan found and the
/// bound proven by then. Empty: it goes on to the end, which may be far.
PlanAnswer bestPlan(const MenuProblem &problem, const PlanRules &rules, std::int64_t &nodes,
                    const std::function<bool()> &isOver = {});

/// The first in dictionary order of the plans for one day worth so much; nothing: there is none, or
/// it was over. @param value no plan is worth more.
std::optional<std::vector<std::size_t>> firstOfDay(const MenuProblem &problem,
                                                   const ChoiceRules &rules, int value,
                                                   std::int64_t &nodes,
                                                   const std::function<bool()> &isOver = {});

} // namespace lidlark::rotation
