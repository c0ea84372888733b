#pragma once

#include "core/goals/goal_record.h"
#include "core/usecase/workplace.h"

#include <string>
#include <vector>

namespace lidlark::usecase {

/// Every goal of a child, ended ones too, with its versions and ratings, by the day it was first
/// agreed. Read by
/// therapists and parents alone; who has no goals' lane reads none.
/// Errors: NotFound (child).
Result<std::vector<goals::GoalRecord>> childGoals(Workplace &workplace,
                                                  const std::string &childAlias);

/// One of them. Errors: NotFound (child, goal).
Result<goals::GoalRecord> childGoal(Workplace &workplace, const std::string &childAlias,
                                    const std::string &goal);

} // namespace lidlark::usecase
