#pragma once

#include "core/box/lid_list.h"
#include "core/box/place.h"
#include "core/store/database.h"

#include <optional>
#include <string>

namespace lidlark::store {

/// Writing the projection rows of one box. Each call replaces what the subject had before.
Outcome writeBox(Database &database, const std::string &box, const journal::Event &child);
Outcome writeLidList(Database &database, const std::string &box, const box::LidList &list);
/// Nothing said of it (any more): no row.
Outcome writePlace(Database &database, const std::string &box,
                   const std::optional<box::Place> &place);

} // namespace lidlark::store
