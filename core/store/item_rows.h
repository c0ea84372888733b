#pragma once

#include "core/store/box_repository.h"

#include <string>

namespace lidlark::store {

/// All that is kept of one item of one box.
struct ItemState {
    int expected = 0; ///< By the lid list.
    box::ItemLedger ledger;
    box::ItemCare care;
    std::vector<box::Request> requests;
};

/// Takes away the rows of every item of the box, before all are written anew.
Outcome clearItems(Database &database, const std::string &box);
/// Takes away the rows of one item of which nothing is said any more.
Outcome clearItem(Database &database, const std::string &box, const ItemId &item);
/// Writes the projection rows of one item, in place of those it had.
Outcome writeItem(Database &database, const std::string &box, const ItemId &item,
                  const ItemState &state);

} // namespace lidlark::store
