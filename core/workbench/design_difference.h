#pragma once

#include "core/workbench/build.h"

#include <span>
#include <vector>

namespace lidlark::workbench {

/// How a box differs from its design in one item.
enum class DifferenceKind {
    LeftOut,    ///< Of the design, and nothing in its place.
    Swapped,    ///< Something stands in its place.
    OtherCount, ///< More or fewer pieces.
    Added       ///< Not of the design, and in no item's place.
};

struct DesignDifference {
    DifferenceKind kind = DifferenceKind::LeftOut;
    ItemId item;      ///< Of the design; of the box where it was added.
    ItemId with;      ///< What stands in its place; empty: nothing.
    int inDesign = 0; ///< Pieces of the item.
    int inBox = 0;    ///< Pieces of the item, or of what stands in its place.
    bool operator==(const DesignDifference &) const = default;
};

/// What is special about a box (job.md T3): in the order of the design, what was added last. Empty:
/// it is as designed, whatever the order of its parts.
std::vector<DesignDifference> differencesFrom(const Design &design, std::span<const BoxPart> parts);

} // namespace lidlark::workbench
