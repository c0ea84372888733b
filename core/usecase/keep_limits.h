#pragma once

#include "core/base/day.h"
#include "core/usecase/workplace.h"

#include <vector>

namespace lidlark::usecase {

/// A check-in is kept for so many days (checkin.md 9 [P]).
inline constexpr int checkInDays = 90;
/// What was played is kept for twelve months (job.md D7 [P]).
inline constexpr int playDays = 366;
/// Alone, a phone's clock is believed for so many days beyond what it last wrote (events.md 9).
inline constexpr int believedDays = 31;

/// The crew's day (events.md 9): the latest day that two devices have reached in their events; of
/// one device alone, its own, but no more than `believedDays` after what it last wrote. So one
/// clock in 2100 expires nothing.
/// @param reached the latest day of each device. @param today of this phone's clock.
Day crewDay(std::vector<Day> reached, Day today);

/// Takes away for good what has been kept for long enough: check-ins older than `checkInDays` and
/// plays older than `playDays`, their words and their days; only that some event was written stays.
/// What of it was shared is told again without it at the next exchange (core/sync/clear_away.h).
Outcome keepLimits(Workplace &workplace);

} // namespace lidlark::usecase
