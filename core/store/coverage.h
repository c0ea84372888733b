#pragma once

#include "core/journal/clock_gaps.h"
#include "core/store/recording.h"

#include <cstdint>
#include <map>
#include <set>
#include <string>

namespace lidlark::store {

/// What this phone holds of a lane: by device, the highest counter without a gap (events.md 2,
/// "seen"). Where segments came, they came in order; a guest, who cannot read what was before the
/// invitation, has been handed what it amounts to.
Result<std::map<std::string, std::uint64_t>> coverageOf(store::Database &database,
                                                        const journal::Lane &lane);

/// Clocks seen ahead, by lane.
using AheadByLane = std::map<journal::Lane, journal::Ahead>;

/// Writes what this phone holds of each of @p lanes that has brought more than `met`s since it last
/// said so, and whose clocks it saw ahead (events.md 3.4). Not among check-ins, where it would date
/// those around it.
Outcome sayMets(Recording &recording, Database &database, const Device &device,
                const std::set<journal::Lane> &lanes, const AheadByLane &ahead);

/// Notes a clock that is further ahead than a phone's own mistake.
void lookAtClock(journal::Ahead &ahead, const journal::Event &event, std::int64_t nowMs);

} // namespace lidlark::store
