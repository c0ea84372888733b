#pragma once

#include "core/base/part_of_day.h"
#include "core/wording/sentence.h"

namespace lidlark::wording {

/// When something was noted, as it ends a sentence: "this evening", "yesterday evening", "on Monday
/// evening" within the last six days, else "on 4 January".
Sentence momentWords(DayPart when, DayPart now);

/// A day that ends a sentence: "today", "yesterday", "on Saturday" within the last six days,
/// "tomorrow", else "on 4 January".
Sentence onDayWords(Day day, Day today);

/// A day to come, after "until": "tomorrow", "Saturday" within the next six days, else "3
/// February".
Sentence untilWords(Day day, Day today);

} // namespace lidlark::wording
