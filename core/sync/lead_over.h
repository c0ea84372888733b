#pragma once

#include "core/sync/crew_book.h"

#include <vector>

namespace lidlark::sync {

/// A new key of the box's lane is first handed on under the one before, where those who remain look
/// for it. What was written meanwhile is not: somebody may just have been removed.
/// @param own what this phone has written and not sealed yet; inside a transaction of the caller's.
Outcome leadOver(Post &post, const CrewBook &book, const HeldEpoch &held,
                 const std::vector<journal::Event> &own);

} // namespace lidlark::sync
