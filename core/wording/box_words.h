#pragma once

#include "core/box/act.h"
#include "core/wording/sentence.h"

namespace lidlark::wording {

/// "Floor checked, not found", "Found", "Counted in": a line of the notebook. What is gone is said
/// with its own word instead (play_words.h).
Sentence boxActWords(box::Act act);

/// "The whole box": what was counted.
Sentence wholeBox();

} // namespace lidlark::wording
