#pragma once

#include "core/journal/meetings.h"
#include "core/store/event_repository.h"

#include <span>

namespace lidlark::store {

/// The rows of one subject of a box lane, items apart: whose box, its lid list, its place, pins.
/// @param events what stands of it.
Outcome writeBoxSubject(Database &database, const LaneSubject &subject,
                        std::span<const journal::Event> events, const journal::Meetings &meetings);

/// The same for a subject of any other lane.
Outcome writeHomeSubject(Database &database, const LaneSubject &subject,
                         std::span<const journal::Event> events, const journal::Seen &seen);

} // namespace lidlark::store
