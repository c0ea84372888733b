#pragma once

#include "core/box/double_entries.h"
#include "core/box/item_basis.h"
#include "core/box/item_tally.h"

#include <span>
#include <vector>

namespace lidlark::box {

/// Everything about one item that a person has said, and what of it is still open.
struct OpenMatters {
    std::vector<Change> changes;
    std::vector<const journal::Event *> removals;
    Basis basis;
    /// How each change stands to each count of the basis, answers taken in: [count][change].
    std::vector<std::vector<Relation>> relations;
    std::vector<std::vector<Relation>> removalRelations; ///< The same for each removal.
    DoubleEntries doubles;
    std::vector<Question> questions; ///< Every question that stands, answered or open.
};

/// @param events of one item, in one order.
OpenMatters openMattersOf(std::span<const journal::Event> events,
                          const journal::Meetings &meetings);

/// Every open matter counted against the box, from one count of the basis.
Reading carefulReading(const OpenMatters &matters, const journal::Event *count);

/// Every open matter counted for the box, from one count of the basis: one reading for each way to
/// choose among values that differ, since which of them leaves most depends on what else is joined.
std::vector<Reading> hopefulReadings(const OpenMatters &matters, const journal::Event *count);

/// The lowest and the highest stock of all readings.
struct Ends {
    Tally careful;
    Tally hopeful;
    const journal::Event *carefulBasis = nullptr;
};

Ends endsOf(int packed, const OpenMatters &matters, const journal::Seen &seen);

} // namespace lidlark::box
