#include "core/store/recording.h"
#include "core/usecase/family.h"
#include "core/usecase/keep_limits.h"

namespace lidlark::usecase {

namespace {

/// The home whose sheet counts: this phone's own; on a therapist's phone the one where the box is,
/// or else the first that the child belongs to.
Result<HomeId> homeOf(Workplace &workplace, const Family &family)
{
    if (!workplace.device.home.empty())
        return workplace.device.home;
    const auto theirs = store::HomeRepository(workplace.database).homesOf(family.box.child);
    if (!theirs)
        return theirs.error();
    for (const HomeId &home : *theirs) {
        if (family.place && family.place->place == home.value)
            return home;
    }
    return theirs->empty() ? HomeId{} : theirs->front();
}

child::Child childFrom(const Family &family, std::vector<child::Goal> goals, bool energyLimited)
{
    child::Child child{family.box.child, family.box.alias, std::nullopt, energyLimited,
                       std::move(goals)};
    if (family.sheet) {
        for (const child::Person &person : family.sheet->people) {
            if (person.id.value == child.id.value)
                child.age = person.age;
        }
    }
    return child;
}

template <class Value> bool take(Result<Value> result, Value &into, std::optional<Error> &error)
{
    if (error)
        return false;
    if (!result) {
        error = result.error();
        return false;
    }
    into = *std::move(result);
    return true;
}

std::optional<Error> loadBox(Workplace &workplace, Family &family)
{
    store::BoxRepository boxes(workplace.database);
    std::optional<Error> error;
    take(boxes.revision(family.box.id), family.revision, error);
    take(boxes.items(family.box.id), family.items, error);
    take(boxes.openLosses(family.box.id), family.losses, error);
    take(boxes.outcomes(family.box.id), family.outcomes, error);
    take(boxes.place(family.box.id), family.place, error);
    return error;
}

std::optional<Error> loadHome(Workplace &workplace, Family &family, Day today)
{
    store::HomeRepository homes(workplace.database);
    std::optional<Error> error;
    std::vector<child::Goal> goals;
    std::optional<std::string> limited;
    take(homeOf(workplace, family), family.home, error);
    if (error)
        return error;
    take(homes.sheet(family.home), family.sheet, error);
    take(homes.plays(family.home, family.box.child, today - playDays), family.plays, error);
    take(homes.offered(family.home, family.box.child), family.offered, error);
    take(homes.checkIns(family.home, family.box.child, today - checkInDays), family.checkIns,
         error);
    take(homes.goals(family.box.child), goals, error);
    take(homes.fact(family.home, family.box.child.value, "energy-limited"), limited, error);
    store::PlanRepository plans(workplace.database);
    take(plans.gradings(family.home, family.box.child), family.gradings, error);
    take(plans.gradingPins(family.box.id), family.gradingPins, error);
    take(plans.dayWishes(family.home, family.box.child, today), family.dayWishes, error);
    family.child = childFrom(family, std::move(goals), limited == "yes");
    return error;
}

} // namespace

Result<Family> loadFamily(Workplace &workplace, const std::string &childAlias)
{
    const Result<DayPart> today = store::todayOf(workplace.clock);
    if (!today)
        return today.error();
    Result<store::BoxRow> box = store::BoxRepository(workplace.database).boxOf(childAlias);
    if (!box)
        return box.error();
    Family family;
    family.box = *box;
    if (const auto error = loadBox(workplace, family))
        return *error;
    if (const auto error = loadHome(workplace, family, today->day))
        return *error;
    if (family.child.age && family.child.age->youngestMonths(today->day) < 0 &&
        today->day < family.child.age->latestBirth - 31)
        return Error{ErrorCode::BeforeBirth, toText(today->day)};
    return family;
}

} // namespace lidlark::usecase
