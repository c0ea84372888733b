#pragma once

#include "core/sync/crew_book.h"

#include <cstdint>

namespace lidlark::sync {

/// How far this phone's own events of a lane lie sealed where everybody can read them. An epoch
/// counts no more once whoever opened it turns out to have been taken out before
/// (core/crew/opening.h): who learned of the removal first never gets its key, so what was written
/// under it has to be sealed once more, under the next.
Result<std::uint64_t> sealedForAll(Post &post, const CrewBook &book, const journal::Lane &lane);

/// What lies under epochs that count no more has been sealed once more; inside a transaction of the
/// caller's.
Outcome leaveVoidEpochs(Post &post, const CrewBook &book, const journal::Lane &lane);

} // namespace lidlark::sync
