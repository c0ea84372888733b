#pragma once

#include "core/catalogue/catalogue.h"
#include "core/workbench/build.h"

#include <span>
#include <vector>

namespace lidlark::workbench {

/// How much play one item brings to a box.
struct ItemPlay {
    ItemId item;
    bool known = true;  ///< The catalogue knows it: of a lid or a label nobody asks for play.
    int activities = 0; ///< That can be made with this box, and take this item.
    int lost = 0;       ///< Of those that can be made, how many could not without it.
    bool operator==(const ItemPlay &) const = default;

    /// Hardly worth its place, its price and its counting home.
    [[nodiscard]] bool isIdle() const { return known && activities < 2; }
};

/// What can be played with a box of these parts and with what a household lends.
struct PlayInBox {
    int activities = 0;          ///< That can be made at all.
    std::vector<ItemPlay> items; ///< In the order of the parts.
    bool operator==(const PlayInBox &) const = default;
};

/// Counts over the whole catalogue, by items alone: no home, no child and no number of pieces is
/// asked. An activity can be made when each thing it must have is in the box, is lent by the
/// household, or has a swap of the activity's own that is. A swap takes part where what it stands
/// in for is not in the box.
PlayInBox playIn(std::span<const BoxPart> parts, const catalogue::Catalogue &catalogue);

} // namespace lidlark::workbench
