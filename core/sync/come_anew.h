#pragma once

#include "core/sync/post.h"
#include "core/sync/secret_keeper.h"

namespace lidlark::sync {

/// Before a phone comes into its crew by a code once more, because it was copied, set back to a
/// backup or taken out: it takes a new id (own_secret.h). One that no crew knows yet is kept, so
/// that a joining can be gone on with. @p post becomes the new one.
Outcome comeAnew(Post &post, SecretKeeper &keeper);

} // namespace lidlark::sync
