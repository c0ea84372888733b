#include "mobile/bridge/video_desk.h"

#include "mobile/bridge/text.h"

namespace lidlark::mobile {

Result<std::vector<usecase::VideoSession>> videoSessionsOf(Household &household)
{
    const auto family = household.family();
    if (!family)
        return family.error();
    return videoSessionsOf(household, *family);
}

Result<std::vector<usecase::VideoSession>> videoSessionsOf(Household &household,
                                                           const usecase::Family &family)
{
    return usecase::videoSessions(household.workplace(), family, household.today().day);
}

Result<usecase::VideoChoices> videoChoicesOf(Household &household, Day day)
{
    return usecase::videoChoices(household.workplace(), toCore(household.child()), day);
}

std::vector<usecase::PlanProblem> problemsOf(Household &household, const workbench::VideoPlan &plan,
                                             const usecase::VideoChoices &choices)
{
    return usecase::problemsOf(plan, choices, household.catalogue());
}

Outcome planVideo(Household &household, const workbench::VideoPlan &plan)
{
    const auto planned = usecase::planVideo(household.workplace(), toCore(household.child()), plan);
    return planned ? Outcome(Done{}) : planned.error();
}

Outcome callOffVideo(Household &household, const std::string &plan)
{
    return usecase::callOffVideo(household.workplace(), toCore(household.child()), plan);
}

Outcome sayAtHand(Household &household, const std::string &plan, const ItemId &item, bool here)
{
    return usecase::sayAtHand(household.workplace(), toCore(household.child()), plan, item, here);
}

} // namespace lidlark::mobile
