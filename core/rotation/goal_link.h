#pragma once

#include "core/catalogue/activity.h"
#include "core/child/child.h"

namespace lidlark::rotation {

/// How an activity bears on the child's current goals (activities.md 2.2).
struct GoalLink {
    int points = 0;                    ///< 0 to 4.
    const child::Goal *goal = nullptr; ///< The one it is linked to most; null with 0 points.
};

/// 4 a main skill and a life area of one goal, 3 a main skill, 2 a life area, 1 a further skill.
/// The first of equal goals counts.
GoalLink goalLinkOf(const catalogue::Activity &activity, const child::Child &child);

/// Whether any current goal names the skill.
bool isGoalSkill(catalogue::Skill skill, const child::Child &child);

} // namespace lidlark::rotation
