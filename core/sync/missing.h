#pragma once

#include "core/sync/crew_book.h"
#include "core/sync/findings.h"

namespace lidlark::sync {

/// What others say they hold and this phone does not: something is on its way, withheld or lost.
/// What they hold of this phone itself and it does not know: it was set back to a backup, or
/// copied.
Outcome lookForMissing(Post &post, const CrewBook &book, Findings &findings);

} // namespace lidlark::sync
