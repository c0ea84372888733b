#include "core/reminder/remind_when.h"

#include "core/base/instant.h"
#include "core/base/part_of_day.h"

namespace lidlark::reminder {

namespace {

constexpr int minutesPerDay = 24 * 60;
constexpr int dayStartsAt = 4 * 60; // events.md 11
/// A day said this far ahead can be the work of a clock set back over midnight; more cannot.
constexpr int daysAClockIsSetBack = 1;

std::int64_t momentOn(Day day, const RemindQuestion &question)
{
    const int minute = question.reminder.minuteOfDay;
    const std::int64_t local = minute < dayStartsAt ? minute + minutesPerDay : minute;
    return (std::int64_t{day.number} * minutesPerDay + local - question.offsetMinutes) *
           msPerMinute;
}

bool wasSaid(const RemindQuestion &question, Day today)
{
    return question.lastSaid && *question.lastSaid >= today &&
           *question.lastSaid <= today + daysAClockIsSetBack;
}

} // namespace

RemindAnswer whenToRemind(const RemindQuestion &question)
{
    if (!question.reminder.on)
        return {};
    const Day today = dayPartAt(question.nowMs, question.offsetMinutes).day;
    const std::int64_t moment = momentOn(today, question);
    if (question.nowMs < moment)
        return {false, moment};
    const bool stillGood = question.nowMs < moment + goodForMinutes * msPerMinute;
    const bool due = stillGood && !question.playedToday && !wasSaid(question, today);
    return {due, momentOn(today + 1, question)};
}

} // namespace lidlark::reminder
