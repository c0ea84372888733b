#pragma once

#include "core/goals/attainment.h"
#include "core/goals/goal_record.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace lidlark::goals {

/// What comes of all goals of a child by the word of one rater: two raters have a score each.
struct RaterScore {
    RatedBy role = RatedBy::Together;
    std::string rater;       ///< Empty for what was agreed together.
    std::optional<double> t; ///< Nothing: none of the rated goals weighs anything.
    int rated = 0;           ///< Goals this rater has rated.
    int goals = 0;           ///< Goals there are.
    bool operator==(const RaterScore &) const = default;
};

/// A score for everybody who has rated a goal in its present words, what was agreed together first.
/// Each goal counts by its rater's last word; what nobody said is left out, and so is what was said
/// of earlier words.
std::vector<RaterScore> raterScores(std::span<const GoalRecord> records,
                                    double correlation = usualCorrelation);

} // namespace lidlark::goals
