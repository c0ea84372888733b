#pragma once

#include "core/sync/crew_book.h"
#include "core/sync/findings.h"
#include "core/sync/storage.h"

namespace lidlark::sync {

/// Others say that they hold more of this phone than it does (missing.h): it was set back, or one
/// of them lies, and shall not silence it. Believed where two say so, or where what they hold lies
/// on the storage; else it becomes something that is missing.
Outcome judgeOwnAhead(Post &post, const CrewBook &book, Storage &storage, Findings &findings);

} // namespace lidlark::sync
