#include "core/usecase/plan_week.h"

#include "core/rotation/week_plan.h"
#include "core/store/recording.h"
#include "core/usecase/menu_question.h"

#include <algorithm>

namespace lidlark::usecase {

namespace {

using rotation::DayAsked;
using Candidates = std::vector<rotation::Candidate>;

/// All that a plan is made of, read once.
struct Grounds {
    Family family;
    safety::Gated gated;
    DayPart now;
    Day from;
};

Result<Grounds> groundsFor(Workplace &workplace, const WeekRequest &request)
{
    if (request.perDay < 1 || request.perDay > 3)
        return Error{ErrorCode::Invalid, "per day: 1 to 3"};
    Result<Family> family = loadFamily(workplace, request.child);
    if (!family)
        return family.error();
    const Result<DayPart> now = store::todayOf(workplace.clock);
    if (!now)
        return now.error();
    const Day from = request.from.value_or(now->day);
    safety::Gated gated = gatedFor(*family, workplace.catalogue, request.room, from);
    return Grounds{*std::move(family), std::move(gated), *now, from};
}

rotation::Question questionOf(const Workplace &workplace, const Grounds &grounds)
{
    MenuRequest request;
    request.child = grounds.family.box.alias;
    return questionFor(workplace, grounds.family, request, {grounds.from, PartOfDay::Morning},
                       grounds.now);
}

std::optional<std::size_t> placeOf(const ActivityId &activity,
                                   std::span<const safety::Admitted> admitted)
{
    const auto found = std::ranges::find_if(
        admitted, [&](const safety::Admitted &one) { return one.activity().id == activity; });
    return found == admitted.end() ? std::nullopt
                                   : std::optional<std::size_t>(found - admitted.begin());
}

play::DayWish wishOf(const Family &family, Day day)
{
    const auto said = family.dayWishes.find(day);
    return said != family.dayWishes.end() ? said->second : play::DayWish{};
}

/// A day that is kept for something the gate holds back stays kept, with nothing on it.
DayAsked askedFor(const play::DayWish &wish, std::span<const safety::Admitted> admitted)
{
    if (wish.wish == play::Wish::Open)
        return {};
    if (wish.wish == play::Wish::Free)
        return {DayAsked::Wish::Free, {}};
    const auto place = placeOf(wish.activity, admitted);
    return {DayAsked::Wish::Keep,
            place ? std::vector<std::size_t>{*place} : std::vector<std::size_t>{}};
}

std::optional<safety::HeldBack> heldBackOf(const ActivityId &activity, const safety::Gated &gated)
{
    for (const safety::HeldBack &held : gated.heldBack) {
        if (held.activity->id == activity)
            return held;
    }
    return std::nullopt;
}

bool playedOn(const Family &family, Day day, const std::vector<safety::Admitted> &planned)
{
    return std::ranges::any_of(family.plays, [&](const play::Play &play) {
        return play.when.day == day && placeOf(play.activity, planned);
    });
}

WeekDay weekDayOf(const Grounds &grounds, Day day, const rotation::PlannedDay &planned)
{
    const play::DayWish wish = wishOf(grounds.family, day);
    WeekDay weekDay{day, wish.wish, {}, std::nullopt, false};
    for (const std::size_t place : planned.candidates)
        weekDay.planned.push_back(grounds.gated.admitted[place]);
    if (wish.wish == play::Wish::Keep && weekDay.planned.empty())
        weekDay.notNow = heldBackOf(wish.activity, grounds.gated);
    weekDay.played = playedOn(grounds.family, day, weekDay.planned);
    return weekDay;
}

Candidates candidatesOf(const safety::Gated &gated)
{
    Candidates candidates;
    for (const safety::Admitted &admitted : gated.admitted)
        candidates.push_back(rotation::candidateOf(admitted));
    return candidates;
}

Outcome sayWishes(Workplace &workplace, const ChildId &child,
                  const std::vector<std::pair<Day, play::DayWish>> &wishes)
{
    if (workplace.device.role == store::Role::Guest || workplace.device.home.empty())
        return Error{ErrorCode::Invalid, "week: only this home's own phones plan it"};
    auto recording = store::Recording::begin(workplace.database, workplace.device, workplace.clock);
    if (!recording)
        return recording.error();
    const journal::Lane lane{journal::LaneKind::Home, workplace.device.home.value};
    for (const auto &[day, wish] : wishes) {
        Outcome said =
            recording->say(lane, journal::Kind::Planned, play::fieldsOf(child, day, wish));
        if (!said)
            return said;
    }
    return recording->commit();
}

} // namespace

Result<Week> planWeek(Workplace &workplace, const WeekRequest &request)
{
    Result<Grounds> grounds = groundsFor(workplace, request);
    if (!grounds)
        return grounds.error();
    std::vector<DayAsked> asked;
    asked.reserve(rotation::planDays);
    for (int day = 0; day < static_cast<int>(rotation::planDays); ++day)
        asked.push_back(
            askedFor(wishOf(grounds->family, grounds->from + day), grounds->gated.admitted));
    const rotation::WeekPlan plan = rotation::planWeek(
        candidatesOf(grounds->gated), questionOf(workplace, *grounds), asked, request.perDay);
    Week week{{}, {}, plan.value, plan.bound, plan.proven};
    for (std::size_t day = 0; day < plan.days.size(); ++day)
        week.days.push_back(
            weekDayOf(*grounds, grounds->from + static_cast<int>(day), plan.days[day]));
    week.family = std::move(grounds->family);
    return week;
}

Result<safety::Admitted> anotherFor(Workplace &workplace, const WeekRequest &request,
                                    const Week &week, Day day, const std::set<ActivityId> &without)
{
    Result<Grounds> grounds = groundsFor(workplace, request);
    if (!grounds)
        return grounds.error();
    std::erase_if(grounds->gated.admitted,
                  [&](const safety::Admitted &one) { return without.contains(one.activity().id); });
    const auto &admitted = grounds->gated.admitted;
    std::vector<DayAsked> asked;
    std::size_t open = 0;
    for (const WeekDay &weekDay : week.days) {
        if (weekDay.day == day) {
            open = asked.size();
            asked.push_back({});
            continue;
        }
        DayAsked stands{DayAsked::Wish::Keep, {}};
        for (const safety::Admitted &planned : weekDay.planned) {
            if (const auto place = placeOf(planned.activity().id, admitted))
                stands.kept.push_back(*place);
        }
        asked.push_back(std::move(stands));
    }
    const rotation::WeekPlan plan =
        rotation::planWeek(candidatesOf(grounds->gated), questionOf(workplace, *grounds), asked, 1);
    if (plan.days[open].candidates.empty())
        return Error{ErrorCode::NotFound, "another activity"};
    return admitted[plan.days[open].candidates.front()];
}

Outcome wishForDay(Workplace &workplace, const std::string &childAlias, Day day,
                   const play::DayWish &wish)
{
    const auto box = store::BoxRepository(workplace.database).boxOf(childAlias);
    const auto today = store::todayOf(workplace.clock);
    if (!box || !today)
        return box ? today.error() : box.error();
    if (day < today->day || day > today->day + static_cast<int>(rotation::planDays))
        return Error{ErrorCode::Invalid, "day: today to a week ahead"};
    if (wish.wish == play::Wish::Keep && workplace.catalogue.activity(wish.activity) == nullptr)
        return Error{ErrorCode::NotFound, "the activity " + wish.activity.value};
    return sayWishes(workplace, box->child, {{day, wish}});
}

Outcome keepWeek(Workplace &workplace, const Week &week)
{
    std::vector<std::pair<Day, play::DayWish>> wishes;
    for (const WeekDay &day : week.days) {
        if (day.wish == play::Wish::Open && !day.planned.empty())
            wishes.push_back({day.day, {play::Wish::Keep, day.planned.front().activity().id}});
    }
    return wishes.empty() ? Outcome(Done{}) : sayWishes(workplace, week.family.child.id, wishes);
}

Outcome openWeek(Workplace &workplace, const Week &week)
{
    std::vector<std::pair<Day, play::DayWish>> wishes;
    for (const WeekDay &day : week.days) {
        if (day.wish != play::Wish::Open)
            wishes.push_back({day.day, {}});
    }
    return wishes.empty() ? Outcome(Done{}) : sayWishes(workplace, week.family.child.id, wishes);
}

} // namespace lidlark::usecase
