#pragma once

#include "core/journal/lane.h"

#include <string>

namespace lidlark::journal {

/// Where a home copies what is played while it shares that: one lane a home and kind (events.md 4),
/// so that a key opens one kind alone.
Lane sharedPlaysOf(const std::string &home);

/// The home a lane is about, or was copied from; empty: none, or a copy of no known kind.
std::string homeOf(const Lane &lane);

/// What lies there is dated with the first moment of a part of the day, by no phone's clock:
/// check-ins and copies (events.md 4). Nobody says there what he holds: that would carry a time.
bool tellsNoTime(LaneKind kind);

} // namespace lidlark::journal
