#pragma once

#include "core/rotation/menu_problem.h"
#include "core/rotation/partial_menu.h"

#include <vector>

namespace lidlark::rotation {

/// What a plan of several days has to satisfy: the rules of each day, and the stock of the problem,
/// which is put back every evening and so binds each day by itself. An entry stands on one day at
/// most.
struct PlanRules {
    std::vector<ChoiceRules> days;
    /// For each day the entries that stand there whatever else; empty: none on any day.
    std::vector<std::vector<std::size_t>> pinned;
};

} // namespace lidlark::rotation
