#pragma once

#include "core/journal/event.h"

#include <cstdint>
#include <map>
#include <set>
#include <span>
#include <string>
#include <vector>

namespace lidlark::journal {

/// A received instant this much ahead of the own clock is written down (events.md 3.4). [P]
inline constexpr std::int64_t leastGapMs = 10 * msPerMinute;

/// Which devices showed a clock ahead of the recording one, by how many milliseconds.
using Ahead = std::map<std::string, std::int64_t>;

/// How far the clocks of one lane are known to differ, from what its `met` events recorded. A
/// record holds for all that the named device had written up to then, against the recording
/// device; once two devices have recorded one, against everybody (events.md 3.4).
class ClockGaps
{
public:
    /// @param events all of one lane; any order, others than `met` are ignored.
    explicit ClockGaps(std::span<const Event> events);

    /// The largest difference recorded for these two, in milliseconds; 0 when none is.
    [[nodiscard]] std::int64_t between(const Event &a, const Event &b) const;

private:
    struct Record {
        std::string by;
        std::uint64_t upTo = 0; ///< Of the device that was ahead: its counter then.
        std::int64_t ms = 0;
    };

    [[nodiscard]] std::int64_t aheadOf(const Event &ahead, const std::string &other) const;

    std::map<std::string, std::vector<Record>> m_records; ///< by the device that was ahead
};

} // namespace lidlark::journal
