#pragma once

#include "core/checkin/pair_counts.h"
#include "core/wording/sentence.h"

#include <string>
#include <vector>

namespace lidlark::wording {

/// What a child told before and after one activity, in counts (checkin.md 7): "8 times Fin told us
/// both.", "Towards steady: 5.", "No change: 2.", "Away from steady: 1.", and that it is a small
/// number. Never a share, an average, or a word that judges.
/// @returns nothing below checkin::pairsBeforeSummary.
std::vector<Sentence> pairSummary(const checkin::PairCounts &pairs, checkin::ShownBy by,
                                  const std::string &childAlias);

} // namespace lidlark::wording
