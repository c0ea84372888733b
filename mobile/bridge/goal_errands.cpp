#include "mobile/bridge/goal_errands.h"

#include "mobile/bridge/text.h"

namespace lidlark::mobile {

namespace {

std::string childOf(const Household &household)
{
    return toCore(household.child());
}

} // namespace

Result<std::vector<goals::GoalRecord>> goalsOf(Household &household)
{
    return usecase::childGoals(household.workplace(), childOf(household));
}

Result<goals::GoalRecord> goalOf(Household &household, const QString &goal)
{
    return usecase::childGoal(household.workplace(), childOf(household), toCore(goal));
}

Result<goals::GoalDraft> draftOf(Household &household, const QString &goal)
{
    return usecase::draftOf(household.workplace(), childOf(household), toCore(goal));
}

Outcome agreeOn(Household &household, const QString &goal, const goals::GoalDraft &draft)
{
    if (!goal.isEmpty())
        return usecase::rewordGoal(household.workplace(), childOf(household), toCore(goal), draft);
    const auto agreed = usecase::agreeGoal(household.workplace(), childOf(household), draft);
    return agreed ? Outcome(Done{}) : Outcome(agreed.error());
}

Outcome rate(Household &household, const usecase::GoalRating &rating)
{
    return usecase::rateGoal(household.workplace(), childOf(household), rating);
}

Outcome endGoal(Household &household, const usecase::GoalEnd &end)
{
    return usecase::endGoal(household.workplace(), childOf(household), end);
}

Outcome takeUp(Household &household, const QString &goal)
{
    return usecase::takeUpGoal(household.workplace(), childOf(household), toCore(goal));
}

Outcome weigh(Household &household, const std::string &goal, int weight)
{
    return usecase::weighGoal(household.workplace(), childOf(household), goal, weight);
}

} // namespace lidlark::mobile
