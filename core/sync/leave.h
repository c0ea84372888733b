#pragma once

#include "core/sync/post.h"

#include <string>

namespace lidlark::sync {

/// This phone's own way out of the crew of @p box: what it had written is sealed, and that it has
/// left, under the key the others still hold; the next exchange brings both, and nothing after
/// that. What the phone holds stays on it.
/// Errors: NotFound (it is not in the crew), ClockUnset, and of the store.
Outcome leave(Post &post, const std::string &box);

/// Whether it went by itself: then its last words are still its to bring.
Result<bool> hasLeft(Post &post, const std::string &box);

} // namespace lidlark::sync
