#pragma once

#include "core/goals/rater_scores.h"
#include "core/usecase/agree_goal.h"
#include "core/usecase/child_goals.h"
#include "core/usecase/end_goal.h"
#include "core/usecase/rate_goal.h"
#include "mobile/bridge/household.h"

#include <vector>

namespace lidlark::mobile {

/// The goals of the child on the table. A failure is a reason, never an empty list.
Result<std::vector<goals::GoalRecord>> goalsOf(Household &household);
Result<goals::GoalRecord> goalOf(Household &household, const QString &goal);
Result<goals::GoalDraft> draftOf(Household &household, const QString &goal);

/// @param goal empty: a new one is agreed; else its words are changed.
Outcome agreeOn(Household &household, const QString &goal, const goals::GoalDraft &draft);
Outcome rate(Household &household, const usecase::GoalRating &rating);
Outcome endGoal(Household &household, const usecase::GoalEnd &end);
Outcome takeUp(Household &household, const QString &goal);
Outcome weigh(Household &household, const std::string &goal, int weight);

} // namespace lidlark::mobile
