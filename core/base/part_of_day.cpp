#include "core/base/part_of_day.h"

#include "core/base/instant.h"

namespace lidlark {

namespace {

constexpr std::int64_t minutesPerDay = 1440;
constexpr int dayStartsAt = 4 * 60;
constexpr int afternoonStartsAt = 12 * 60;
constexpr int eveningStartsAt = 17 * 60;

std::int64_t floorDivide(std::int64_t value, std::int64_t by)
{
    return value >= 0 ? value / by : -((-value + by - 1) / by);
}

int startMinute(PartOfDay part)
{
    switch (part) {
    case PartOfDay::Morning:
        return dayStartsAt;
    case PartOfDay::Afternoon:
        return afternoonStartsAt;
    case PartOfDay::Evening:
        break;
    }
    return eveningStartsAt;
}

} // namespace

DayPart dayPartAt(std::int64_t utcMs, int offsetMinutes)
{
    const std::int64_t localMinutes = floorDivide(utcMs, msPerMinute) + offsetMinutes;
    const std::int64_t dayNumber = floorDivide(localMinutes - dayStartsAt, minutesPerDay);
    const std::int64_t minute = localMinutes - dayNumber * minutesPerDay; // 240 to 1679
    PartOfDay part = PartOfDay::Morning;
    if (minute >= eveningStartsAt)
        part = PartOfDay::Evening;
    else if (minute >= afternoonStartsAt)
        part = PartOfDay::Afternoon;
    return {Day{static_cast<std::int32_t>(dayNumber)}, part};
}

int localMinuteOfDay(std::int64_t utcMs, int offsetMinutes)
{
    const std::int64_t localMinutes = floorDivide(utcMs, msPerMinute) + offsetMinutes;
    return static_cast<int>(localMinutes -
                            floorDivide(localMinutes, minutesPerDay) * minutesPerDay);
}

std::int64_t firstMomentMs(DayPart dayPart, int offsetMinutes)
{
    return (dayPart.day.number * minutesPerDay + startMinute(dayPart.part) - offsetMinutes) *
           msPerMinute;
}

} // namespace lidlark
