#pragma once

#include "core/base/day.h"
#include "core/reminder/reminder.h"

#include <cstdint>
#include <optional>

namespace lidlark::reminder {

/// All that the answer depends on.
struct RemindQuestion {
    Reminder reminder;
    std::int64_t nowMs = 0;
    int offsetMinutes = 0;       ///< Local time minus UTC, now.
    std::optional<Day> lastSaid; ///< By this phone, for whatever family.
    bool playedToday = false;    ///< With any child of this phone.
};

struct RemindAnswer {
    bool due = false;
    std::optional<std::int64_t> nextMs; ///< When to ask again; nothing while it is off.
    bool operator==(const RemindAnswer &) const = default;
};

/// Minutes after its moment for which a reminder is still worth saying. Later the moment is past,
/// and nothing is said of it. Common practice, no source.
inline constexpr int goodForMinutes = 60;

/// When the phone says its one line. A day runs from 04:00 to 04:00 (events.md 11), so that 01:00
/// belongs to the evening before. At most one a day; none on a day with play; a day missed is
/// never made up for. Where the clock was set back, a day for which it was said counts as said; a
/// day far ahead is a clock that was wrong, and binds nobody.
RemindAnswer whenToRemind(const RemindQuestion &question);

} // namespace lidlark::reminder
