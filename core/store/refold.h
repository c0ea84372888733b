#pragma once

#include "core/store/database.h"

namespace lidlark::store {

/// Rises whenever a fold gives other rows for the same events.
inline constexpr int foldVersion = 4;

/// Folds all rows anew when they were folded by other rules than today's: after a step of the
/// schema, or by another release. Cheap when there is nothing to do. Call it once after opening.
Outcome refoldIfOld(Database &database);

} // namespace lidlark::store
