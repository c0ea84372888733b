#include "core/usecase/caseload.h"

#include "core/store/recording.h"
#include "core/usecase/box_items.h"

#include <algorithm>

namespace lidlark::usecase {

namespace {

bool isWaitedFor(const BoxItem &item)
{
    return item.request && item.request->isOpen();
}

void readStock(const Family &family, const catalogue::Catalogue &catalogue, Day today,
               BoxHealth &health)
{
    for (const BoxItem &item : boxItemsOf(family, catalogue, today)) {
        if (isToTakeOut(family, item.row.item))
            continue;
        if (isWaitedFor(item) && item.request->step < box::RequestStep::Packed)
            health.asked.push_back(item.row.item);
        // What waits for a washing is there.
        const bool gone = item.none && !item.row.care.mouthed && item.row.expected > 0;
        if (!isWaitedFor(item) && (item.runsLow || gone))
            health.low.push_back(item.row.item);
    }
}

void readReviews(const Family &family, Day today, BoxHealth &health)
{
    for (const child::Goal &goal : family.child.goals) {
        if (goal.reviewOn - today <= reviewNoticeDays &&
            (!health.reviewOn || goal.reviewOn < *health.reviewOn))
            health.reviewOn = goal.reviewOn;
    }
}

} // namespace

Result<BoxHealth> boxHealthOf(Workplace &workplace, const Family &family, Day today)
{
    BoxHealth health;
    health.child = family.box.alias;
    readStock(family, workplace.catalogue, today, health);
    readReviews(family, today, health);
    auto takeOuts = takeOutsOf(workplace, family);
    auto revision = revisionStateOf(workplace, family);
    if (!takeOuts || !revision)
        return takeOuts ? revision.error() : takeOuts.error();
    for (TakeOut &takeOut : *takeOuts) {
        if (!takeOut.isDone())
            health.mustAvoid.push_back(std::move(takeOut));
    }
    for (const store::LossRow &loss : family.losses)
        health.onTheFloor += loss.pieces;
    if (*revision && (!(*revision)->isConfirmed() || (*revision)->twoLists))
        health.unconfirmed = std::move(*revision);
    return health;
}

Result<std::vector<BoxHealth>> caseload(Workplace &workplace)
{
    const auto today = store::todayOf(workplace.clock);
    const auto boxes = store::BoxRepository(workplace.database).boxes();
    if (!today || !boxes)
        return today ? boxes.error() : today.error();
    std::vector<BoxHealth> all;
    all.reserve(boxes->size());
    for (const store::BoxRow &box : *boxes) {
        const auto family = loadFamily(workplace, box.alias);
        auto health = family ? boxHealthOf(workplace, *family, today->day)
                             : Result<BoxHealth>(family.error());
        if (!health) {
            BoxHealth unknown;
            unknown.child = box.alias;
            unknown.problem = health.error();
            health = std::move(unknown);
        }
        all.push_back(*std::move(health));
    }
    std::ranges::sort(all, {}, &BoxHealth::child);
    return all;
}

} // namespace lidlark::usecase
