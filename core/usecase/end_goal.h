#pragma once

#include "core/goals/goal_turn.h"
#include "core/usecase/workplace.h"

#include <string>

namespace lidlark::usecase {

/// How a goal comes to an end.
struct GoalEnd {
    std::string goal;
    goals::Turn why = goals::Turn::Reached; ///< One that ends.
    std::string words = {};                 ///< Why, in one's own words; may be empty.
};

/// Ends a goal today. From now on it is none of the child's goals, and menus and caseloads know
/// nothing of it; its words, levels and ratings stay, and it can be taken up again.
/// Errors: NotFound (child, goal), NotAllowed (who reads no goals), Invalid with the field named
/// (goal: it has ended already; why; reason: more than 200 characters or more than one line).
Outcome endGoal(Workplace &workplace, const std::string &childAlias, const GoalEnd &end);

/// An ended goal is worked towards again, in the words it had. Errors: as above, and Invalid for a
/// goal that has not ended.
Outcome takeUpGoal(Workplace &workplace, const std::string &childAlias, const std::string &goal);

} // namespace lidlark::usecase
