#include "core/wording/day_words.h"

#include <array>

namespace lidlark::wording {

std::string weekdayWord(Day day)
{
    static constexpr std::array names{"Thursday", "Friday",  "Saturday", "Sunday",
                                      "Monday",   "Tuesday", "Wednesday"}; // 1970-01-01 is first
    const int index = ((day.number % 7) + 7) % 7;
    return names[static_cast<std::size_t>(index)];
}

std::string dateWords(Day day)
{
    static constexpr std::array names{"January",   "February", "March",    "April",
                                      "May",       "June",     "July",     "August",
                                      "September", "October",  "November", "December"};
    const CivilDate date = civilFrom(day);
    return std::to_string(date.day) + " " + names[static_cast<std::size_t>(date.month - 1)];
}

Sentence dayWords(Day day, Day today)
{
    const int ago = today - day;
    if (ago == 0)
        return {"today", {}};
    if (ago == 1)
        return {"yesterday", {}};
    if (ago > 1 && ago < 7)
        return {"%1", {weekdayWord(day)}};
    return {"%1", {dateWords(day)}};
}

Sentence dayPartWords(DayPart when)
{
    switch (when.part) {
    case PartOfDay::Morning:
        return {"%1 morning", {weekdayWord(when.day)}};
    case PartOfDay::Afternoon:
        return {"%1 afternoon", {weekdayWord(when.day)}};
    case PartOfDay::Evening:
        break;
    }
    return {"%1 evening", {weekdayWord(when.day)}};
}

Sentence dayHeading(DayPart when, DayPart now)
{
    if (when == now) {
        switch (when.part) {
        case PartOfDay::Morning:
            return {"This morning", {}};
        case PartOfDay::Afternoon:
            return {"This afternoon", {}};
        case PartOfDay::Evening:
            break;
        }
        return {"This evening", {}};
    }
    Sentence words = dayWords(when.day, now.day);
    words.english = capital(words.english);
    return words;
}

} // namespace lidlark::wording
