#pragma once

#include "core/goals/rating.h"
#include "core/usecase/workplace.h"

#include <optional>
#include <string>

namespace lidlark::usecase {

/// What somebody says of a goal.
struct GoalRating {
    std::string goal;
    int level = 0; ///< -2 to +2.
    goals::RatedBy role = goals::RatedBy::Together;
    std::string rater = {};                ///< By name; may be empty where it was agreed together.
    std::optional<Day> day = std::nullopt; ///< Nothing: today.
    /// Which words were on screen; nothing: those in force. A rating of words that have been
    /// changed meanwhile stays with them.
    std::optional<goals::VersionKey> version = std::nullopt;
};

/// Keeps a rating beside all others: what this rater said on that day of these words is replaced,
/// nothing else. Of a goal that has ended, too: what two saw on its last day. Errors: NotFound
/// (child, goal, its words), NotAllowed (who reads no goals), Invalid with the field named (level,
/// rater, a day still to come or before the goal was agreed).
Outcome rateGoal(Workplace &workplace, const std::string &childAlias, const GoalRating &said);

} // namespace lidlark::usecase
