#pragma once

#include "core/rotation/menu_problem.h"
#include "core/rotation/side_conditions.h"

#include <cstdint>
#include <vector>

namespace lidlark::rotation {

/// The choice that stands when as little as possible has given way.
struct Settled {
    std::vector<std::size_t> entries; ///< Ascending; empty when nothing can be offered.
    int value = 0;                    ///< Tenths.
    std::vector<SideCondition> gaveWay;
    std::int64_t nodes = 0;
};

/// The best choice of @p offers entries. When none satisfies all, first as few held-back entries as
/// will do come in, because the check-in's rules never give way; then the side conditions give way
/// one after the other, each in addition to those before it (design.md 5); then there is one offer
/// fewer, with all conditions in force again. Stock never gives way.
Settled settle(const MenuProblem &problem, std::size_t offers);

} // namespace lidlark::rotation
