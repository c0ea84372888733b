#pragma once

#include "core/store/recording.h"
#include "core/sync/crew_book.h"

namespace lidlark::sync {

/// Says again that somebody was removed, where that one could answer by removing whoever said it,
/// and has not been heard to: so an answer that comes later falls (core/crew/removals.h). Everybody
/// but a guest says so once, also who may not remove anybody.
Outcome passOn(Post &post, const CrewBook &book, store::Recording &recording);

} // namespace lidlark::sync
