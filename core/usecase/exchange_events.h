#pragma once

#include "core/journal/lane.h"
#include "core/usecase/workplace.h"

#include <functional>

namespace lidlark::usecase {

/// Takes into @p to every event of @p from whose lane @p wanted accepts, and writes what this
/// device now holds of each lane that brought something (events.md 2, "seen"). The plain, unsealed
/// exchange between two stores in one pair of hands: the demo and tests. Phones that are apart
/// exchange sealed segments.
/// @returns how many events were new.
Result<int> takeEventsFrom(store::Database &from, Workplace &to,
                           const std::function<bool(const journal::Lane &)> &wanted);

} // namespace lidlark::usecase
