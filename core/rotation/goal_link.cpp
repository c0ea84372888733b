#include "core/rotation/goal_link.h"

#include <algorithm>
#include <vector>

namespace lidlark::rotation {

namespace {

template <class T> bool share(const std::vector<T> &left, const std::vector<T> &right)
{
    return std::ranges::any_of(left, [&](T one) { return std::ranges::count(right, one) > 0; });
}

int pointsFor(const catalogue::Activity &activity, const child::Goal &goal)
{
    const bool mainSkill = share(activity.skillsMain, goal.skills);
    const bool lifeArea = share(activity.lifeAreas, goal.lifeAreas);
    if (mainSkill)
        return lifeArea ? 4 : 3;
    if (lifeArea)
        return 2;
    return share(activity.skillsAlso, goal.skills) ? 1 : 0;
}

} // namespace

GoalLink goalLinkOf(const catalogue::Activity &activity, const child::Child &child)
{
    GoalLink strongest;
    for (const child::Goal &goal : child.goals) {
        const int points = pointsFor(activity, goal);
        if (points > strongest.points)
            strongest = {points, &goal};
    }
    return strongest;
}

bool isGoalSkill(catalogue::Skill skill, const child::Child &child)
{
    return std::ranges::any_of(child.goals, [&](const child::Goal &goal) {
        return std::ranges::count(goal.skills, skill) > 0;
    });
}

} // namespace lidlark::rotation
