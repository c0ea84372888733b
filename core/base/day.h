#pragma once

#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace lidlark {

/// One calendar day in the proleptic Gregorian calendar, counted from 1970-01-01 = 0.
struct Day {
    std::int32_t number = 0;

    auto operator<=>(const Day &) const = default;
    Day operator+(int days) const { return {number + days}; }
    Day operator-(int days) const { return {number - days}; }
    /// Days from @p other to this; negative when this is earlier.
    int operator-(Day other) const { return number - other.number; }
};

struct CivilDate {
    int year = 1970;
    int month = 1; ///< 1 to 12.
    int day = 1;   ///< 1 to 31.
    bool operator==(const CivilDate &) const = default;
};

/// @returns nothing when the date does not exist (30 February) or the year is outside 1 to 9999.
std::optional<Day> dayFrom(CivilDate date);
CivilDate civilFrom(Day day);

/// ISO 8601 calendar date, "2027-01-11".
std::string toText(Day day);
/// @returns nothing unless @p text is exactly a valid "YYYY-MM-DD".
std::optional<Day> dayFromText(std::string_view text);

/// Completed calendar months from @p from to @p to (negative when @p to is earlier). A month is
/// complete on the same day of a later month, or on its last day where that day does not exist.
int wholeMonthsBetween(Day from, Day to);

/// The day @p months completed months before @p day: wholeMonthsBetween(result, day) == months,
/// and no later day has that property.
Day latestDayWithMonths(Day day, int months);

} // namespace lidlark
