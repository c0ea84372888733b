#pragma once

#include "core/sync/post.h"

#include <string>

namespace lidlark::sync {

/// Makes this phone the first of the crew of @p box; its lanes are opened at the next exchange
/// (turn_keys.h), and what other phones wrote into the store before is handed on (hand_on.h).
/// Nothing changes where there is a crew already.
/// Errors: NotAllowed (only a parent's or the therapist's phone; the clinic's, core/crew/
/// clinic_crew.h, only a therapist's), ClockUnset.
Outcome foundCrew(Post &post, const std::string &box);

} // namespace lidlark::sync
