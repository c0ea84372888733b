#pragma once

#include "core/sync/crew_book.h"

namespace lidlark::sync {

/// What a phone that is out still has to say: that it has left, or whom it had removed before it
/// heard that it was removed. The latter is sealed here, once, where the others look for it.
/// @returns whether there is anything to bring.
Result<bool> hasPartingWords(Post &post, const CrewBook &book);

} // namespace lidlark::sync
