#pragma once

#include "core/goals/goal_draft.h"
#include "core/usecase/workplace.h"

#include <string>

namespace lidlark::usecase {

/// Writes down a goal that the family and the therapist have agreed on. From now on its words stand
/// as they are. @param draft without a day of agreement: today's.
/// @returns the goal's id. Errors: NotFound (child), NotAllowed (a caregiver or guest, who reads no
/// goals), Invalid with the field named (core/goals/goal_draft.h; an agreement still to come).
Result<std::string> agreeGoal(Workplace &workplace, const std::string &childAlias,
                              goals::GoalDraft draft);

/// The same goal in other words: a new version, agreed on the draft's day. The one before stays,
/// and what was rated by it. Where words and levels are the ones in force, no version begins: only
/// its review, its skills, its parts of life and the short words change, and the draft's reason is
/// not kept. Errors: as above, NotFound (goal), and Invalid for a goal that has ended.
Outcome rewordGoal(Workplace &workplace, const std::string &childAlias, const std::string &goal,
                   goals::GoalDraft draft);

/// How much the goal counts in the therapist's score, 0 to 9. Only the therapist weighs.
/// Errors: NotFound (child, goal), NotAllowed, Invalid (weight).
Outcome weighGoal(Workplace &workplace, const std::string &childAlias, const std::string &goal,
                  int weight);

/// The draft that rewordGoal starts from: the words in force.
/// Errors: NotFound (child, goal).
Result<goals::GoalDraft> draftOf(Workplace &workplace, const std::string &childAlias,
                                 const std::string &goal);

} // namespace lidlark::usecase
