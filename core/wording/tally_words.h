#pragma once

#include "core/base/day.h"
#include "core/wording/sentence.h"

#include <string>

namespace lidlark::wording {

/// "One week on paper".
Sentence tallyTitle();
/// "Week from Monday, 11 January 2027".
Sentence tallyWeek(Day monday);
/// Over the columns: "On the list", "Counted".
Sentence tallyListed();
Sentence tallyCounted();
/// How to fill it in: "Write how many. An empty square says none. Count together at the end of the
/// week."
Sentence tallyNote();
/// Over two lines to write on: "Anything else about the box".
Sentence tallyElse();
/// Who takes it: "Keep it in the box. We type it in at the next visit."
Sentence tallyVisit();
/// Before what is done at once when a small piece is lost: "Something small is lost?"
Sentence tallyLostLead();

} // namespace lidlark::wording
