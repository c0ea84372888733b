#include "core/wording/moment_words.h"

#include "core/wording/day_words.h"

namespace lidlark::wording {

namespace {

std::string partWord(PartOfDay part)
{
    return std::string(toText(part));
}

} // namespace

Sentence momentWords(DayPart when, DayPart now)
{
    const int ago = now.day - when.day;
    if (ago == 0)
        return {"this " + partWord(when.part), {}};
    if (ago == 1)
        return {"yesterday " + partWord(when.part), {}};
    if (ago > 1 && ago < 7)
        return {"on %1", {weekdayWord(when.day) + " " + partWord(when.part)}};
    return {"on %1", {dateWords(when.day)}};
}

Sentence onDayWords(Day day, Day today)
{
    const int ago = today - day;
    if (ago == 0)
        return {"today", {}};
    if (ago == 1)
        return {"yesterday", {}};
    if (ago == -1)
        return {"tomorrow", {}};
    return {"on %1", {fill(dayWords(day, today))}};
}

Sentence untilWords(Day day, Day today)
{
    const int ahead = day - today;
    if (ahead == 0)
        return {"today", {}};
    if (ahead == 1)
        return {"tomorrow", {}};
    if (ahead > 1 && ahead < 7)
        return {"%1", {weekdayWord(day)}};
    return {"%1", {dateWords(day)}};
}

} // namespace lidlark::wording
