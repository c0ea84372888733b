#pragma once

#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace lidlark {

inline constexpr std::int64_t msPerMinute = 60'000;
inline constexpr std::int64_t msPerHour = 60 * msPerMinute;
inline constexpr std::int64_t msPerDay = 86'400'000;
/// An instant further ahead of our own clock than this is never taken on (events.md 3.3).
inline constexpr std::int64_t mostAheadMs = msPerDay;

/// A reading of the hybrid logical clock: physical milliseconds since 1970-01-01T00:00Z, then a
/// counter for what happens within one millisecond.
/// Source: Kulkarni, Demirbas, Madappa, Avva, Leone 2014, "Logical Physical Clocks", section 3.
struct Instant {
    std::int64_t ms = 0;
    std::uint32_t logical = 0;

    auto operator<=>(const Instant &) const = default;
};

/// @returns milliseconds since the epoch for "2027-01-11T18:25:00Z" or with an offset such as
/// "+01:00"; nothing when the text is not such an instant.
std::optional<std::int64_t> msFromText(std::string_view text);
/// "2027-01-11T18:25:00Z".
std::string textFromMs(std::int64_t ms);

/// The instant for the next event of this device: the largest of its own physical clock, its own
/// last instant, and those received instants that are at most 24 h ahead of the physical clock
/// (events.md 3.3), so that a clock in the far future neither spreads nor sticks.
Instant nextInstant(std::int64_t physicalMs, Instant lastOwn, Instant largestReceived);

} // namespace lidlark
