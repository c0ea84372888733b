#pragma once

#include "core/box/item_tally.h"

#include <span>
#include <vector>

namespace lidlark::box {

/// Every event that says the item was taken out of the house; malformed ones have no effect.
std::vector<const journal::Event *> takenOutOf(std::span<const journal::Event> events);

/// Pieces that came into the box after it was emptied, and so are still to be taken out: those that
/// have seen a removal and that no removal has seen.
int cameSince(const std::vector<Change> &changes, const Reading &reading,
              const journal::Seen &seen);

} // namespace lidlark::box
