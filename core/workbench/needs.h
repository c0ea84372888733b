#pragma once

#include "core/workbench/build.h"
#include "core/workbench/build_problem.h"
#include "core/workbench/supply.h"

#include <cstdint>
#include <map>
#include <span>
#include <vector>

namespace lidlark::workbench {

/// Pieces that were bought or taken off the shelf for a build before, by item (purchase.h).
using SetAside = std::map<ItemId, std::int64_t>;

/// What the boxes of a build still need of one item.
struct Need {
    std::int64_t pieces = 0; ///< In all boxes, beyond what was set aside for them.
    /// On top of those; rounded up, and 0 where play does not use the item up. The spares of what
    /// was set aside were bought with it.
    std::int64_t spares = 0;
    std::int64_t covered = 0; ///< In the boxes, and set aside for them.
    std::int64_t back = 0;    ///< Set aside, and no box needs it any more.
    bool operator==(const Need &) const = default;
};

/// What a build needs, once it and the supplies have been looked over: nothing else reads numbers
/// that nobody has checked. What is wrong with an offer's price counts only where the build needs
/// the item; all other numbers count always.
/// @param aside what lies ready for these boxes.
/// @returns a need for each supply, in their order.
OrProblems<std::vector<Need>> needsOf(const Build &build, std::span<const Supply> supplies,
                                      const SetAside &aside = {});

} // namespace lidlark::workbench
