#pragma once

#include "core/box/box_events.h"
#include "core/box/place.h"
#include "core/store/database.h"

#include <map>
#include <optional>
#include <string>

namespace lidlark::store {

/// Writing the projection rows of one box. Each call replaces what the subject had before.
/// @param since the day on which each item was first on the lid list.
Outcome writeBox(Database &database, const std::string &box, const journal::Event &child);
Outcome writeRevision(Database &database, const std::string &box, const box::Revision &revision,
                      Day issued, const std::map<ItemId, Day> &since);
/// Nothing said of it (any more): no row.
Outcome writePlace(Database &database, const std::string &box,
                   const std::optional<box::Place> &place);

} // namespace lidlark::store
