#include "core/base/instant.h"

#include "core/base/day.h"

#include <algorithm>
#include <cstdio>

namespace lidlark {

namespace {

std::optional<int> twoDigits(std::string_view text, std::size_t at, int largest)
{
    if (at + 2 > text.size())
        return std::nullopt;
    const char tens = text[at];
    const char ones = text[at + 1];
    if (tens < '0' || tens > '9' || ones < '0' || ones > '9')
        return std::nullopt;
    const int value = (tens - '0') * 10 + (ones - '0');
    return value <= largest ? std::optional(value) : std::nullopt;
}

/// Minutes east of UTC from "Z", "+HH:MM" or "-HH:MM".
std::optional<int> zoneMinutes(std::string_view zone)
{
    if (zone == "Z")
        return 0;
    if (zone.size() != 6 || (zone[0] != '+' && zone[0] != '-') || zone[3] != ':')
        return std::nullopt;
    const auto hours = twoDigits(zone, 1, 14);
    const auto minutes = twoDigits(zone, 4, 59);
    if (!hours || !minutes)
        return std::nullopt;
    const int total = *hours * 60 + *minutes;
    return zone[0] == '-' ? -total : total;
}

} // namespace

std::optional<std::int64_t> msFromText(std::string_view text)
{
    if (text.size() < 20 || text[10] != 'T' || text[13] != ':' || text[16] != ':')
        return std::nullopt;
    const auto day = dayFromText(text.substr(0, 10));
    const auto hour = twoDigits(text, 11, 23);
    const auto minute = twoDigits(text, 14, 59);
    const auto second = twoDigits(text, 17, 59);
    const auto zone = zoneMinutes(text.substr(19));
    if (!day || !hour || !minute || !second || !zone)
        return std::nullopt;
    return day->number * msPerDay +
           ((*hour * 60 + *minute - *zone) * 60LL + *second) * std::int64_t{1000};
}

std::string textFromMs(std::int64_t ms)
{
    const std::int64_t dayNumber = (ms >= 0 ? ms : ms - (msPerDay - 1)) / msPerDay;
    const std::int64_t inDay = ms - dayNumber * msPerDay;
    char buffer[32];
    std::snprintf(buffer, sizeof buffer, "T%02d:%02d:%02dZ", static_cast<int>(inDay / 3'600'000),
                  static_cast<int>(inDay / msPerMinute % 60), static_cast<int>(inDay / 1000 % 60));
    return toText(Day{static_cast<std::int32_t>(dayNumber)}) + buffer;
}

Instant nextInstant(std::int64_t physicalMs, Instant lastOwn, Instant largestReceived)
{
    Instant floor{};
    for (const Instant candidate : {lastOwn, largestReceived}) {
        if (candidate.ms <= physicalMs + mostAheadMs)
            floor = std::max(floor, candidate);
    }
    if (physicalMs > floor.ms)
        return {physicalMs, 0};
    return {floor.ms, floor.logical + 1};
}

} // namespace lidlark
