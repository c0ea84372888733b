#include "core/wording/moment_words.h"

#include "core/wording/day_words.h"

#include <array>

namespace lidlark::wording {

Sentence momentWords(DayPart when, DayPart now)
{
    // In the order of PartOfDay.
    static constexpr std::array today{say("this morning"), say("this afternoon"),
                                      say("this evening")};
    static constexpr std::array yesterday{say("yesterday morning"), say("yesterday afternoon"),
                                          say("yesterday evening")};
    const int ago = now.day - when.day;
    const auto part = static_cast<std::size_t>(when.part);
    if (ago == 0)
        return {today[part], {}};
    if (ago == 1)
        return {yesterday[part], {}};
    if (ago > 1 && ago < 7)
        return onWeekdayPartWords(when);
    return {say("on %1"), {dateWords(when.day)}};
}

Sentence onDayWords(Day day, Day today)
{
    const int ago = today - day;
    if (ago == 0)
        return {say("today"), {}};
    if (ago == 1)
        return {say("yesterday"), {}};
    if (ago == -1)
        return {say("tomorrow"), {}};
    if (ago > 1 && ago < 7)
        return onWeekdayWords(day);
    return {say("on %1"), {dateWords(day)}};
}

Sentence untilWords(Day day, Day today)
{
    const int ahead = day - today;
    if (ahead == 0)
        return {say("today"), {}};
    if (ahead == 1)
        return {say("tomorrow"), {}};
    if (ahead > 1 && ahead < 7)
        return weekdayWord(day);
    return dateWords(day);
}

} // namespace lidlark::wording
