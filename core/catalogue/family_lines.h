#pragma once

#include "core/catalogue/activity.h"

#include <string>
#include <string_view>
#include <vector>

namespace lidlark::catalogue {

/// One piece of an entry's words, and where it stands in the file.
struct FamilyLine {
    std::string field; ///< "steps[2].text".
    std::string_view text;
};

/// What an adult reads to play: the first line, the steps, easier and harder, other ways in, the
/// way home. Empty fields are left out. The lines point into @p activity.
std::vector<FamilyLine> playingLines(const Activity &activity);

/// Every line of words in the entry that a family reads or hears: those, and its name, invite,
/// pictures in words, floor reason, signs to watch for, talk and swaps.
std::vector<FamilyLine> everyLine(const Activity &activity);

} // namespace lidlark::catalogue
