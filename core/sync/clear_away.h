#pragma once

#include "core/sync/crew_book.h"
#include "core/sync/storage.h"

#include <optional>

namespace lidlark::sync {

/// What this phone has shared and what was erased since, or has had its time, is told again without
/// it; what a guest was handed goes with the guest. In one transaction.
Outcome tellErasedAgain(Post &post, const CrewBook &book, Day today);

/// Takes off the storage what was told again, once that lies there.
/// @returns the trouble that cut it short; the rest goes next time.
Result<std::optional<Trouble>> clearAway(Post &post, const CrewBook &book, Storage &storage);

} // namespace lidlark::sync
