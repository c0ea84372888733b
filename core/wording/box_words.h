#pragma once

#include "core/box/act.h"
#include "core/wording/sentence.h"

namespace lidlark::wording {

/// "Floor checked, not found", "Found", "Taken out of the house": a line of the notebook.
Sentence boxActWords(box::Act act);

} // namespace lidlark::wording
