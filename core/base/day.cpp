#include "core/base/day.h"

#include <chrono>
#include <cstdio>

namespace lidlark {

namespace {

std::chrono::year_month_day ymdOf(Day day)
{
    return std::chrono::year_month_day{std::chrono::sys_days{std::chrono::days{day.number}}};
}

std::optional<int> digits(std::string_view text)
{
    int value = 0;
    for (const char c : text) {
        if (c < '0' || c > '9')
            return std::nullopt;
        value = value * 10 + (c - '0');
    }
    return value;
}

} // namespace

std::optional<Day> dayFrom(CivilDate date)
{
    if (date.year < 1 || date.year > 9999 || date.month < 1 || date.month > 12 || date.day < 1)
        return std::nullopt;
    const std::chrono::year_month_day ymd{std::chrono::year{date.year},
                                          std::chrono::month{static_cast<unsigned>(date.month)},
                                          std::chrono::day{static_cast<unsigned>(date.day)}};
    if (!ymd.ok())
        return std::nullopt;
    return Day{static_cast<std::int32_t>(std::chrono::sys_days{ymd}.time_since_epoch().count())};
}

CivilDate civilFrom(Day day)
{
    const auto ymd = ymdOf(day);
    return {static_cast<int>(ymd.year()), static_cast<int>(static_cast<unsigned>(ymd.month())),
            static_cast<int>(static_cast<unsigned>(ymd.day()))};
}

std::string toText(Day day)
{
    const CivilDate date = civilFrom(day);
    char buffer[32];
    std::snprintf(buffer, sizeof buffer, "%04d-%02d-%02d", date.year, date.month, date.day);
    return buffer;
}

std::optional<Day> dayFromText(std::string_view text)
{
    if (text.size() != 10 || text[4] != '-' || text[7] != '-')
        return std::nullopt;
    const auto year = digits(text.substr(0, 4));
    const auto month = digits(text.substr(5, 2));
    const auto day = digits(text.substr(8, 2));
    if (!year || !month || !day)
        return std::nullopt;
    return dayFrom({*year, *month, *day});
}

int wholeMonthsBetween(Day from, Day to)
{
    if (to < from)
        return -wholeMonthsBetween(to, from);
    const auto start = ymdOf(from);
    const auto end = ymdOf(to);
    const int months = (static_cast<int>(end.year()) - static_cast<int>(start.year())) * 12 +
                       static_cast<int>(static_cast<unsigned>(end.month())) -
                       static_cast<int>(static_cast<unsigned>(start.month()));
    const auto lastOfEnd = (end.year() / end.month() / std::chrono::last).day();
    const bool reached = end.day() >= start.day() || end.day() == lastOfEnd;
    return reached ? months : months - 1;
}

Day latestDayWithMonths(Day day, int months)
{
    Day candidate = day - months * 30;
    while (wholeMonthsBetween(candidate, day) > months)
        candidate = candidate + 1;
    while (wholeMonthsBetween(candidate, day) < months)
        candidate = candidate - 1;
    while (wholeMonthsBetween(candidate + 1, day) == months)
        candidate = candidate + 1;
    return candidate;
}

} // namespace lidlark
