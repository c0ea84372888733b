#include "core/goals/attainment.h"

#include <algorithm>
#include <cmath>

namespace lidlark::goals {

namespace {

bool isSound(const WeighedLevel &goal)
{
    return std::isfinite(goal.weight) && goal.weight >= 0 &&
           (!goal.level || (*goal.level >= lowestLevel && *goal.level <= highestLevel));
}

double heaviestRated(std::span<const WeighedLevel> goals)
{
    double heaviest = 0;
    for (const WeighedLevel &goal : goals)
        heaviest = std::max(heaviest, goal.level ? goal.weight : 0);
    return heaviest;
}

} // namespace

std::optional<double> attainmentScore(std::span<const WeighedLevel> goals, double correlation)
{
    if (!(correlation >= 0 && correlation <= 1) ||
        !std::all_of(goals.begin(), goals.end(), isSound))
        return std::nullopt;
    const double heaviest = heaviestRated(goals);
    if (heaviest <= 0)
        return std::nullopt;
    double reached = 0;
    double weights = 0;
    double squares = 0;
    for (const WeighedLevel &goal : goals) {
        if (!goal.level)
            continue;
        // As parts of the heaviest: no square is too large, or too small, to be told.
        const double weight = goal.weight / heaviest;
        reached += weight * *goal.level;
        weights += weight;
        squares += weight * weight;
    }
    const double spread = (1 - correlation) * squares + correlation * weights * weights;
    return 50 + 10 * reached / std::sqrt(spread);
}

} // namespace lidlark::goals
