#pragma once

#include "core/journal/seen.h"

#include <span>

namespace lidlark::journal {

/// The value of a name, a setting, a place: what has seen a value replaces it; among concurrent
/// ones the larger (instant, device, counter) wins (events.md 3.1, 3.2).
/// @returns null when no event of @p kind is among @p events.
const Event *latestOf(std::span<const Event> events, Kind kind, const Seen &seen);

} // namespace lidlark::journal
