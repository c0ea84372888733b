#pragma once

#include "core/base/day.h"
#include "core/base/enum_names.h"

#include <cstdint>
#include <optional>
#include <string_view>

namespace lidlark {

/// Parts of a family's day (events.md 11): morning 04:00 to 12:00, afternoon to 17:00, evening to
/// 04:00 of the next calendar day.
enum class PartOfDay { Morning, Afternoon, Evening };

struct DayPart {
    Day day;
    PartOfDay part = PartOfDay::Morning;
    auto operator<=>(const DayPart &) const = default;
};

/// @param utcMs milliseconds since 1970-01-01T00:00Z. @param offsetMinutes local time minus UTC.
DayPart dayPartAt(std::int64_t utcMs, int offsetMinutes);

/// Minutes since local midnight, 0 to 1439.
int localMinuteOfDay(std::int64_t utcMs, int offsetMinutes);

/// First moment of the part, in UTC milliseconds: what a check-in is dated with (events.md 4).
std::int64_t firstMomentMs(DayPart dayPart, int offsetMinutes);

inline constexpr EnumNames<PartOfDay, 3> partOfDayNames{{"morning", "afternoon", "evening"}};

inline std::string_view toText(PartOfDay part)
{
    return partOfDayNames.of(part);
}

inline std::optional<PartOfDay> partOfDayFromText(std::string_view text)
{
    return partOfDayNames.parse(text);
}

} // namespace lidlark
