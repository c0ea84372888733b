#pragma once

#include "core/sync/findings.h"
#include "core/sync/post.h"

#include <string>

namespace lidlark::sync {

/// What others say they hold and this phone does not: something is on its way, withheld or lost.
/// What they hold of this phone itself and it does not know: it was set back to a backup, or
/// copied.
Outcome lookForMissing(Post &post, const std::string &box, Findings &findings);

} // namespace lidlark::sync
