#pragma once

#include "core/journal/clock_gaps.h"
#include "core/journal/seen.h"

namespace lidlark::journal {

/// Two hours (events.md 3.5): concurrent instants closer than this are not ordered. [P]
inline constexpr std::int64_t marginMs = 2 * msPerHour;

/// What the `met` events of one lane tell: who had seen what, and whose clocks differ.
struct Meetings {
    Seen seen;
    ClockGaps gaps;

    explicit Meetings(std::span<const Event> events) : seen(events), gaps(events) {}

    /// Which of two events came first, as far as it can be known (events.md 3.1, 3.5).
    enum class Order { Before, After, Open };
    /// @returns how @p event stands to @p other.
    [[nodiscard]] Order orderOf(const Event &event, const Event &other) const
    {
        if (seen.saw(other, event))
            return Order::Before;
        if (seen.saw(event, other))
            return Order::After;
        const std::int64_t ahead = event.instant.ms - other.instant.ms;
        const std::int64_t margin = marginMs + gaps.between(event, other);
        if (ahead > margin)
            return Order::After;
        return ahead < -margin ? Order::Before : Order::Open;
    }
    [[nodiscard]] bool withinMargin(const Event &a, const Event &b) const
    {
        const std::int64_t apart = a.instant.ms - b.instant.ms;
        const std::int64_t margin = marginMs + gaps.between(a, b);
        return apart <= margin && apart >= -margin;
    }
};

} // namespace lidlark::journal
