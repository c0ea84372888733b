#pragma once

#include "core/base/id.h"

#include <string>
#include <vector>

namespace lidlark::workbench {

using DesignId = Id<struct DesignTag>;
using BuildId = Id<struct BuildTag>;

/// One line of what belongs in a box.
struct BoxPart {
    ItemId item;
    int pieces = 1;   ///< What is cut from a roll: in metres, each metre a piece.
    ItemId insteadOf; ///< Of the design, what it stands in for; empty: nothing.
    bool operator==(const BoxPart &) const = default;
};

/// What belongs in a kind of box: the standard one, say.
struct Design {
    DesignId id;
    std::string name;
    std::vector<BoxPart> parts; ///< Each item once, in the order of packing.
    bool operator==(const Design &) const = default;
};

/// One box to pack. It says all that goes into it, also where it is as its design.
struct BuildBox {
    std::string code;  ///< On its label; no two of a build have the same.
    std::string whose; ///< The child's alias; empty: nobody's yet, or the therapist's own.
    DesignId design;   ///< What it departs from; empty: it has no design.
    std::vector<BoxPart> parts;
    bool operator==(const BuildBox &) const = default;
};

/// Boxes that are bought for and packed together.
struct Build {
    BuildId id;
    std::string currency = "GBP"; ///< ISO 4217; the one of every price.
    int sparesPercent = 10;       ///< On items that are used up, rounded up to a whole piece.
    std::vector<BuildBox> boxes;
    bool operator==(const Build &) const = default;
};

// What a build can be, so that no sum of it leaves 64 bits.
inline constexpr std::size_t mostBoxes = 10'000;
inline constexpr int mostPiecesInBox = 1'000; ///< Of one item.
inline constexpr int mostSparesPercent = 100;

} // namespace lidlark::workbench
