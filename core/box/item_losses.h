#pragma once

#include "core/box/double_entries.h"
#include "core/box/item_changes.h"
#include "core/box/item_ledger.h"

#include <span>
#include <vector>

namespace lidlark::box {

/// What a count could not account for, or found too much of.
struct CountGap {
    const journal::Event *count = nullptr; ///< Null: there was no count.
    int missing = 0;
    int found = 0;
};

/// Every entry that may have left pieces on a floor, oldest first. A find closes what it had seen,
/// oldest first, piece by piece, and so does a count that finds more than was expected; a checked
/// floor closes exactly the entry it names (events.md 5, floor note).
/// @param same groups of entries that somebody said are the same: one loss, the largest.
std::vector<Loss> lossesOf(std::span<const journal::Event> events,
                           const std::vector<Change> &changes, const std::vector<Group> &same,
                           const CountGap &gap, const journal::Seen &seen);

} // namespace lidlark::box
