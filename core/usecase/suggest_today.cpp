#include "core/usecase/suggest_today.h"

#include "core/rotation/candidate.h"
#include "core/rotation/filters.h"
#include "core/store/recording.h"
#include "core/usecase/menu_question.h"

namespace lidlark::usecase {

Result<TodayMenu> suggestToday(Workplace &workplace, const MenuRequest &request)
{
    Result<Family> family = loadFamily(workplace, request.child);
    if (!family)
        return family.error();
    const Result<DayPart> now = store::todayOf(workplace.clock);
    if (!now)
        return now.error();
    const DayPart when{request.day.value_or(now->day), request.part.value_or(now->part)};
    if (family->child.age && when.day < family->child.age->latestBirth - 31)
        return Error{ErrorCode::BeforeBirth, toText(when.day)};
    TodayMenu today{*std::move(family), when, {}, {}};
    today.gated =
        gatedFor(today.family, workplace.catalogue, request.room, when.day, request.boxNotHere);
    today.menu = rotation::chooseMenu(today.gated.admitted,
                                      questionFor(workplace, today.family, request, when, *now));
    return today;
}

Outcome markOffered(Workplace &workplace, const TodayMenu &menu)
{
    if (workplace.device.role == store::Role::Guest || menu.family.home.empty())
        return Done{};
    std::set<ActivityId> marked;
    for (const auto &[activity, offered] : menu.family.offered) {
        if (offered.last == menu.when.day)
            marked.insert(activity);
    }
    Result<store::Recording> recording =
        store::Recording::begin(workplace.database, workplace.device, workplace.clock);
    if (!recording)
        return recording.error();
    for (const rotation::Offer &offer : menu.menu.offers) {
        const ActivityId &activity = offer.admitted.activity().id;
        if (marked.contains(activity))
            continue;
        Outcome said = recording->sayUntimed({journal::LaneKind::Home, menu.family.home.value},
                                             journal::Kind::Offered,
                                             play::fieldsOfOffered(menu.family.child.id, activity));
        if (!said)
            return said;
    }
    return recording->commit();
}

Result<safety::Admitted> anythingAtAll(Workplace &workplace, const MenuRequest &request)
{
    const Result<Family> family = loadFamily(workplace, request.child);
    if (!family)
        return family.error();
    const Result<DayPart> now = store::todayOf(workplace.clock);
    if (!now)
        return now.error();
    const safety::Gated gated =
        gatedFor(*family, workplace.catalogue, request.room, now->day, request.boxNotHere);
    std::vector<safety::Admitted> choices;
    for (const safety::Admitted &admitted : gated.admitted) {
        const bool fits = rotation::fitsIn(admitted.activity().minutes, request.minutes) &&
                          rotation::staysWith(rotation::candidateOf(admitted), request.filters);
        if (fits && !request.without.contains(admitted.activity().id))
            choices.push_back(admitted);
    }
    if (choices.empty())
        return Error{ErrorCode::NotFound, "an activity"};
    std::uint64_t chance = 0;
    for (const std::uint8_t byte : workplace.entropy.sixteenBytes())
        chance = chance << 8U | byte;
    return choices[chance % choices.size()];
}

} // namespace lidlark::usecase
