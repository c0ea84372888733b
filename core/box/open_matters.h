#pragma once

#include "core/box/double_entries.h"
#include "core/box/item_basis.h"

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

} // namespace lidlark::box
