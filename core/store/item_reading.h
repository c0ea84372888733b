#pragma once

#include "core/store/box_repository.h"

namespace lidlark::store {

/// Every item of a box with all that is kept of it, in the order of their ids.
Result<std::vector<ItemRow>> readItems(Database &database, const BoxId &box);

} // namespace lidlark::store
