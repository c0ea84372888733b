#include "core/wording/day_words.h"

#include <array>

namespace lidlark::wording {

namespace {

// Other languages bend a name by what stands before it: each way of saying it is whole.

constexpr std::array weekdays{
    say("Thursday"), say("Friday"),  say("Saturday"), say("Sunday"),
    say("Monday"),   say("Tuesday"), say("Wednesday")}; // 1970-01-01 was the first

constexpr std::array onWeekdays{say("on Thursday"), say("on Friday"), say("on Saturday"),
                                say("on Sunday"),   say("on Monday"), say("on Tuesday"),
                                say("on Wednesday")};

constexpr std::array<std::array<English, 3>, 7> onWeekdayParts{
    {{say("on Thursday morning"), say("on Thursday afternoon"), say("on Thursday evening")},
     {say("on Friday morning"), say("on Friday afternoon"), say("on Friday evening")},
     {say("on Saturday morning"), say("on Saturday afternoon"), say("on Saturday evening")},
     {say("on Sunday morning"), say("on Sunday afternoon"), say("on Sunday evening")},
     {say("on Monday morning"), say("on Monday afternoon"), say("on Monday evening")},
     {say("on Tuesday morning"), say("on Tuesday afternoon"), say("on Tuesday evening")},
     {say("on Wednesday morning"), say("on Wednesday afternoon"), say("on Wednesday evening")}}};

constexpr std::array months{say("January"),   say("February"), say("March"),    say("April"),
                            say("May"),       say("June"),     say("July"),     say("August"),
                            say("September"), say("October"),  say("November"), say("December")};

constexpr std::array dates{say("%1 January"), say("%1 February"), say("%1 March"),
                           say("%1 April"),   say("%1 May"),      say("%1 June"),
                           say("%1 July"),    say("%1 August"),   say("%1 September"),
                           say("%1 October"), say("%1 November"), say("%1 December")};

std::size_t weekdayOf(Day day)
{
    return static_cast<std::size_t>(((day.number % 7) + 7) % 7);
}

std::size_t monthOf(Day day)
{
    return static_cast<std::size_t>(civilFrom(day).month - 1);
}

} // namespace

Sentence weekdayWord(Day day)
{
    return {weekdays[weekdayOf(day)], {}};
}

Sentence onWeekdayWords(Day day)
{
    return {onWeekdays[weekdayOf(day)], {}};
}

Sentence onWeekdayPartWords(DayPart when)
{
    return {onWeekdayParts[weekdayOf(when.day)][static_cast<std::size_t>(when.part)], {}};
}

Sentence monthWord(Day day)
{
    return {months[monthOf(day)], {}};
}

Sentence dateWords(Day day)
{
    return {dates[monthOf(day)], {inDigits(civilFrom(day).day)}};
}

Sentence dayWords(Day day, Day today)
{
    const int ago = today - day;
    if (ago == 0)
        return {say("today"), {}};
    if (ago == 1)
        return {say("yesterday"), {}};
    if (ago > 1 && ago < 7)
        return weekdayWord(day);
    return dateWords(day);
}

Sentence dayPartWords(DayPart when)
{
    switch (when.part) {
    case PartOfDay::Morning:
        return {say("%1 morning"), {weekdayWord(when.day)}};
    case PartOfDay::Afternoon:
        return {say("%1 afternoon"), {weekdayWord(when.day)}};
    case PartOfDay::Evening:
        break;
    }
    return {say("%1 evening"), {weekdayWord(when.day)}};
}

Sentence dayHeading(DayPart when, DayPart now)
{
    const int ago = now.day - when.day;
    if (when != now) {
        if (ago == 0)
            return {say("Today"), {}};
        return ago == 1 ? Sentence{say("Yesterday"), {}} : dayWords(when.day, now.day);
    }
    switch (when.part) {
    case PartOfDay::Morning:
        return {say("This morning"), {}};
    case PartOfDay::Afternoon:
        return {say("This afternoon"), {}};
    case PartOfDay::Evening:
        break;
    }
    return {say("This evening"), {}};
}

} // namespace lidlark::wording
