#pragma once

#include "core/catalogue/measures.h"
#include "core/wording/sentence.h"

#include <vector>

namespace lidlark::wording {

/// "Disc: 15 mm across, 5 mm thick."
Sentence solidWords(const measure::Solid &solid);

/// How large it is, what comes off it, its cord and its hollow, a sentence each. What is soft has
/// no size that means anything, and says so.
std::vector<Sentence> measureWords(const catalogue::Measures &measures);

/// What follows from the measures, computed and never ticked: "By its measures: it fits the small
/// parts cylinder." @returns nothing where nothing follows.
std::vector<Sentence> measuredWords(const catalogue::Measures &measures);

} // namespace lidlark::wording
