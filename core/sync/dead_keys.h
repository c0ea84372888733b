#pragma once

#include "core/sync/crew_book.h"

namespace lidlark::sync {

/// What this phone has said under a key that counts no more, since whoever opened it was out by
/// then, it says again under the one in force: others may never have had that key.
Outcome tellAgainFromDeadKeys(Post &post, const CrewBook &book, Day today);

} // namespace lidlark::sync
