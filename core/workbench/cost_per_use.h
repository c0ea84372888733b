#pragma once

#include "core/workbench/money.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>

namespace lidlark::workbench {

/// Below this many boxes no cost per use is told: it would say something of one family (job.md
/// T20).
inline constexpr std::size_t leastBoxesForUse = 10;

/// A box that is with a family who shares what it plays.
struct BoxInUse {
    MaterialPence material; ///< What lies in it.
    std::int64_t uses = 0;  ///< Activities that were played with it and shared.
};

/// What one use of an activity has cost in material.
struct CostPerUse {
    std::size_t boxes = 0;
    MaterialPence perUse;
    bool operator==(const CostPerUse &) const = default;
};

/// The material of all the boxes over all their uses, as one fraction that is rounded once, half
/// up. Whole boxes count, however little of them is used up. Of each box what the build sheet shows
/// for it, so that a reader can add it up again.
/// @returns nothing for fewer than `leastBoxesForUse` boxes, or without any use.
std::optional<CostPerUse> costPerUse(std::span<const BoxInUse> boxes);

} // namespace lidlark::workbench
