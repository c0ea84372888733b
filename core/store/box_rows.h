#pragma once

#include "core/box/box_events.h"
#include "core/box/item_ledger.h"
#include "core/box/place.h"
#include "core/store/database.h"

#include <optional>
#include <string>

namespace lidlark::store {

/// Writing the projection rows of one box. Each call replaces what the subject had before.
Outcome writeBox(Database &database, const std::string &box, const journal::Event &child);
Outcome writeRevision(Database &database, const std::string &box, const box::Revision &revision,
                      Day issued);
Outcome writePlace(Database &database, const std::string &box, const box::Place &place);
/// Takes away the rows of every item of the box, before all are written anew.
Outcome clearItems(Database &database, const std::string &box);
Outcome writeItem(Database &database, const std::string &box, const ItemId &item, int expected,
                  const box::ItemLedger &ledger);

} // namespace lidlark::store
