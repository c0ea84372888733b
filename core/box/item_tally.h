#pragma once

#include "core/box/double_entries.h"
#include "core/box/item_changes.h"
#include "core/box/item_ledger.h"

#include <vector>

namespace lidlark::box {

/// One way to take all that is open about an item: the basis, what each change says, on which side
/// of the count it stands, and which entries are the same pieces.
struct Reading {
    const journal::Event *basis = nullptr; ///< Null: the packed number.
    std::vector<Value> values;             ///< By change.
    std::vector<bool> after;               ///< By change: after the basis.
    std::vector<const journal::Event *> removalsBefore;
    std::vector<const journal::Event *> removalsAfter;
    bool hopeful = false; ///< Finds of which neither a removal nor they had seen the other stay.
};

/// Each group counts once, with its largest number; what of it a count covers is covered, only more
/// than that comes after it. Changes @p reading.
void countOnce(Reading &reading, const std::vector<Group> &groups);

/// Where every piece is by this reading. Conserved, whatever the reading.
Tally tallyOf(int packed, const std::vector<Change> &changes, const Reading &reading,
              const journal::Seen &seen);

} // namespace lidlark::box
