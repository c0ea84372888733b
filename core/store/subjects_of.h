#pragma once

#include "core/store/event_repository.h"

#include <string_view>
#include <vector>

namespace lidlark::store {

/// The subjects of a lane whose name begins with @p sort, a word and its colon ("own-entry:"), in
/// their order. Costs next to nothing where there are none.
Result<std::vector<LaneSubject>> subjectsOf(Database &database, const journal::Lane &lane,
                                            std::string_view sort);

} // namespace lidlark::store
