#pragma once

#include "core/workbench/build.h"
#include "core/workbench/build_problem.h"
#include "core/workbench/supply.h"

#include <cstdint>
#include <span>
#include <vector>

namespace lidlark::workbench {

/// What the boxes of a build need of one item.
struct Need {
    std::int64_t pieces = 0; ///< In all boxes.
    std::int64_t spares = 0; ///< On top; rounded up, and 0 where play does not use the item up.
    bool operator==(const Need &) const = default;
};

/// What a build needs, once it and the supplies have been looked over: nothing else reads numbers
/// that nobody has checked. What is wrong with an offer's price counts only where the build needs
/// the item; all other numbers count always.
/// @returns a need for each supply, in their order.
OrProblems<std::vector<Need>> needsOf(const Build &build, std::span<const Supply> supplies);

} // namespace lidlark::workbench
