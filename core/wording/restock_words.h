#pragma once

#include "core/base/day.h"
#include "core/wording/sentence.h"

#include <string>

namespace lidlark::wording {

/// "Restock round", and "Asked for up to 25 January 2027, for 3 boxes": for a therapist.
Sentence restockTitle();
Sentence restockNote(Day day, int boxes);
/// "Nobody waits for anything."
Sentence nothingToRestock();
/// "in place of rubber bands".
Sentence inPlaceOf(const Argument &name);

} // namespace lidlark::wording
