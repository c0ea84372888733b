#pragma once

#include "core/sync/bundle.h"
#include "core/sync/post.h"

#include <string>

namespace lidlark::sync {

/// All that this phone holds of a crew, sealed as it lies on a storage, to be handed over as a
/// file: what it has written, and what it has taken in from others. What was written since is
/// sealed first, and still waits for the storage as well. Errors: of the store, and ClockUnset.
Result<Bundle> bundleOfCrew(Post &post, const std::string &box);

} // namespace lidlark::sync
