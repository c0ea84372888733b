#pragma once

#include "core/base/part_of_day.h"
#include "core/box/piece_events.h"
#include "core/journal/seen.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace lidlark::box {

/// What was said of one piece of a perishable.
struct Piece {
    PieceId id;
    std::optional<Day> opened; ///< The earliest day anybody said who had not seen a correction.
    int timesLeftOpen = 0;     ///< Days on which it was found left open.
    bool operator==(const Piece &) const = default;
};

/// What people have said of an item beside how many there are.
struct ItemCare {
    std::vector<Piece> pieces; ///< Those of which something was said.
    std::optional<Day> checked;
    std::optional<int> keepsDays; ///< The family's own limit after opening.
    bool mouthed = false;         ///< In a mouth, and neither washed nor replaced since.
    std::string mouthedBy;
    DayPart mouthedWhen;
    bool operator==(const ItemCare &) const = default;
};

/// A pure fold. An item that went into a mouth on one phone and was washed on another, neither
/// knowing of the other, still waits for a washing.
ItemCare foldCare(std::span<const journal::Event> events, const journal::Seen &seen);

} // namespace lidlark::box
