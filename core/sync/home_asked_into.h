#pragma once

#include "core/crew/role.h"
#include "core/sync/post.h"

#include <string>

namespace lidlark::sync {

/// The home of somebody who is asked in by this phone: its own; by a therapist's phone, which has
/// none, the child's, or a new one where no home of the child is known. @param another a home of
/// its own. Empty for a therapist.
Result<HomeId> homeAskedInto(Post &post, const std::string &box, crew::Role role, bool another);

} // namespace lidlark::sync
