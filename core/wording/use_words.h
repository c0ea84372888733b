#pragma once

#include "core/base/day.h"
#include "core/wording/sentence.h"

#include <span>
#include <string>
#include <vector>

namespace lidlark::wording {

/// Pieces gone for good in one week.
struct WeekPieces {
    Day first; ///< Monday.
    int pieces = 0;
};

/// A chart of use, read aloud: "Stick-on eyes: 2 in the week of 4 January.", then "None in the
/// other 7 weeks." No trend, and nothing about what would be better.
/// @param weeks oldest first.
std::vector<Sentence> useWords(const std::string &name, std::span<const WeekPieces> weeks);

/// What stands under the bars: the date of the first week, the month where a week begins a new one,
/// "this week" under the last; empty between.
std::vector<Sentence> weekLabels(std::span<const WeekPieces> weeks);

} // namespace lidlark::wording
