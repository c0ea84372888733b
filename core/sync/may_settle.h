#pragma once

#include "core/sync/post.h"
#include "core/sync/welcome.h"

namespace lidlark::sync {

/// Whether this phone may take what it was given by whoever lets it in. A welcome says who is in
/// its own crew and nothing else, or one crew could found another on a newcomer's phone. What a
/// phone keeps of a clinic goes into no other clinic's crew: only into the one it was in before,
/// whose first word the other has to know.
/// Errors: Invalid (to another phone; words about something else; another clinic's).
Outcome maySettle(Post &post, const Welcome &welcome);

} // namespace lidlark::sync
