#pragma once

#include "core/box/item_changes.h"

#include <optional>
#include <span>
#include <vector>

namespace lidlark::box {

/// Pieces that a count could not account for.
struct Missing {
    const journal::Event *count = nullptr; ///< Null: there was no count.
    int pieces = 0;
};

/// Every entry that may have left pieces on a floor, oldest first. A find closes what it had seen,
/// oldest first, piece by piece; a checked floor closes exactly the entry it names
/// (events.md 5, floor note).
std::vector<Loss> lossesOf(std::span<const journal::Event> events,
                           const std::vector<Change> &changes, const Missing &missing,
                           const journal::Seen &seen);

/// The earliest opening day among the statements that no later one has replaced.
std::optional<Day> openedDay(std::span<const journal::Event> events, const journal::Seen &seen);

} // namespace lidlark::box
