#pragma once

#include "core/workbench/build.h"
#include "core/workbench/money.h"
#include "core/workbench/supply.h"

#include <cstdint>
#include <span>
#include <vector>

namespace lidlark::workbench {

/// What one piece is worth, as an exact fraction: so many pence for so many pieces.
struct PiecePrice {
    std::int64_t pence = 0;
    std::int64_t pieces = 0; ///< 0: nobody knows a price.
    bool operator==(const PiecePrice &) const = default;
};

/// What lies in one box.
struct BoxCost {
    MaterialPence material;
    /// What lies in it as well, from the shelf, and nobody knows what it cost.
    std::vector<ItemId> unpriced;
    bool operator==(const BoxCost &) const = default;
};

/// The material of each box: its pieces' prices added as fractions over one denominator, of any
/// length, so that nothing can overflow; rounded once for the whole box, half up.
/// @param pieces a price for each supply, in their order. Boxes name items of the supplies only.
std::vector<BoxCost> costsOf(std::span<const BuildBox> boxes, std::span<const Supply> supplies,
                             std::span<const PiecePrice> pieces);

} // namespace lidlark::workbench
