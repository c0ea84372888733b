#pragma once

#include "core/goals/goal_draft.h"
#include "core/goals/goal_record.h"
#include "core/wording/sentence.h"

#include <vector>

namespace lidlark::wording {

/// What a level means, without a number: "Much more than we expect". @param level -2 to +2.
Sentence levelWords(int level);

/// What a finding about a draft says at its field (core/goals/goal_draft.h).
Sentence findingWords(const goals::DraftFinding &finding);

/// "The family".
Sentence ratedByWords(goals::RatedBy role);

/// How a goal ends, or that it goes on: "We reached it".
Sentence turnWords(goals::Turn turn);

/// "Ruth on 29 March: We reached it".
Sentence turnLine(const goals::GoalTurn &turn);

/// "Ruth, 4 February: " and the words of the level.
Sentence ratingWords(const goals::Rating &rating, const goals::GoalVersion &version);

/// A goal for a summary that families read: its words, where it stood when it was agreed, where it
/// stands by what was agreed together, what each rater said last, the review, and what is not
/// known. Words and days only, never a number for a level (job.md T12).
std::vector<Sentence> goalSummary(const goals::GoalRecord &record);

} // namespace lidlark::wording
