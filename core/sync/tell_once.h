#pragma once

#include "core/sync/crew_book.h"
#include "core/sync/findings.h"

namespace lidlark::sync {

/// Leaves out of @p findings what somebody who was removed has shared since, where it was told
/// before: nobody can do anything about it, and it lies there for as long as the storage is kept.
/// What a phone shared under the id it had before it was let in anew is nobody's trouble.
Outcome tellOnce(Post &post, const CrewBook &book, Findings &findings);

} // namespace lidlark::sync
