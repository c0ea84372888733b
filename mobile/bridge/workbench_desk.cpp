#include "mobile/bridge/workbench_desk.h"

#include "core/usecase/avoided_items.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

Result<std::vector<usecase::BoxHealth>> caseloadOn(Household &household)
{
    return usecase::caseload(household.workplace());
}

Result<usecase::BoxHealth> boxHealth(Household &household)
{
    const auto family = household.family();
    if (!family)
        return family.error();
    return usecase::boxHealthOf(household.workplace(), *family, household.today().day);
}

Result<usecase::RevisionWeighed> weigh(Household &household, const std::map<ItemId, int> &packed)
{
    const auto family = household.family();
    if (!family)
        return family.error();
    return usecase::weighRevision(household.workplace(), *family, packed);
}

Outcome revise(Household &household, const std::map<ItemId, int> &packed, const QString &why)
{
    return usecase::reviseBox(household.workplace(), toCore(household.child()), {}, packed,
                              toCore(why));
}

catalogue::TagSet avoidedThere(Household &household)
{
    const auto family = household.family();
    if (!family)
        return {};
    const auto avoided = usecase::avoidedForChild(household.workplace(), family->box.child);
    return avoided ? *avoided : catalogue::TagSet();
}

Result<std::vector<bool>> coachingTicks(Household &household)
{
    return usecase::coachingOf(household.workplace(), toCore(household.child()));
}

Outcome tickCoaching(Household &household, int line, bool done)
{
    return usecase::tickCoaching(household.workplace(), toCore(household.child()), line, done);
}

Result<usecase::RestockRound> roundOf(Household &household)
{
    return usecase::restockRound(household.workplace());
}

Outcome packFor(Household &household, const QString &child, const ItemId &item)
{
    return usecase::packFor(household.workplace(), toCore(child), item);
}

Outcome goBy(Household &household, const QString &child, usecase::Way way)
{
    return usecase::goBy(household.workplace(), toCore(child), way);
}

Outcome sendOff(Household &household, const QString &child)
{
    return usecase::sendOff(household.workplace(), toCore(child));
}

Result<usecase::UseCost> useCostOf(Household &household)
{
    return usecase::useCost(household.workplace());
}

} // namespace lidlark::mobile
