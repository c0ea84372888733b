#pragma once

#include "core/rotation/plan_rules.h"
#include "tests/core/rotation/random_problem.h"

#include <random>

namespace lidlark::rotation::samples {

/// A random problem of several days.
struct PlanProblem {
    MenuProblem problem;
    PlanRules rules;
};

/// What a random one is like.
struct PlanShape {
    int entries = 8;
    int days = 2;
    int mostADay = 2;
    bool allRules = true; ///< Our own side conditions too; else those of the text format.
    bool pins = false;
};

inline PlanProblem randomPlan(const PlanShape &shape, std::uint32_t seed)
{
    std::mt19937 source(seed);
    const auto below = [&](int limit) {
        return static_cast<int>(source() % static_cast<std::uint32_t>(limit));
    };
    ProblemShape entries;
    entries.entries = shape.entries;
    entries.families = 2 + below(shape.entries);
    entries.skills = 3;
    entries.items = 1 + below(4);
    entries.heldBackPercent = shape.allRules ? 15 : 0;
    entries.messyPercent = 30;
    PlanProblem made{randomProblem(entries, seed), {}};
    for (Entry &entry : made.problem.entries) {
        entry.minutes = 2 + below(8);
        entry.family = below(3) == 0 ? noFamily : entry.family;
    }
    const int given = shape.allRules ? below(6) : static_cast<int>(SideCondition::Family);
    const bool daysAreAlike = below(2) == 0;
    const int each = 1 + below(shape.mostADay);
    for (int day = 0; day < shape.days; ++day) {
        ChoiceRules rules;
        rules.offers = static_cast<std::size_t>(daysAreAlike ? each : 1 + below(shape.mostADay));
        rules.inForce = ConditionsInForce(
            static_cast<std::size_t>(daysAreAlike || !shape.allRules ? given : below(6)));
        rules.heldBackMost = shape.allRules ? static_cast<std::size_t>(seed % 2) : 0;
        rules.messyMost = daysAreAlike ? 1 : below(3);
        rules.minutes = static_cast<int>(rules.offers) * (daysAreAlike ? 6 : 4 + below(5));
        made.rules.days.push_back(rules);
    }
    if (shape.pins) {
        made.rules.pinned.resize(made.rules.days.size());
        made.rules.pinned[static_cast<std::size_t>(below(shape.days))].push_back(
            static_cast<std::size_t>(below(shape.entries)));
    }
    return made;
}

} // namespace lidlark::rotation::samples
