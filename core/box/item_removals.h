#pragma once

#include "core/box/item_changes.h"

#include <span>
#include <vector>

namespace lidlark::box {

/// Every event that says the item was taken out of the house; malformed ones have no effect.
std::vector<const journal::Event *> takenOutOf(std::span<const journal::Event> events);

/// Pieces that came into the box after it was emptied, and so are still to be taken out: those of
/// finds that have seen a removal and that no removal has seen.
/// @param hopeful finds of which neither has seen the other count too.
int foundSince(const std::vector<const journal::Event *> &removals,
               const std::vector<Change> &changes, const journal::Seen &seen, bool hopeful);

} // namespace lidlark::box
