#pragma once

#include "core/base/part_of_day.h"
#include "core/wording/sentence.h"

namespace lidlark::wording {

/// "today", "yesterday", "Saturday" within the last six days, else "4 January".
Sentence dayWords(Day day, Day today);
/// "4 January".
Sentence dateWords(Day day);
/// "January".
Sentence monthWord(Day day);
/// "Monday".
Sentence weekdayWord(Day day);
/// "on Monday".
Sentence onWeekdayWords(Day day);
/// "on Monday evening".
Sentence onWeekdayPartWords(DayPart when);
/// "Monday evening": the head of the first screen.
Sentence dayPartWords(DayPart when);
/// "This evening", "Yesterday", "Sunday": a heading in the notebook.
Sentence dayHeading(DayPart when, DayPart now);

} // namespace lidlark::wording
