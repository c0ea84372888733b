#include "core/usecase/suggest_today.h"

#include "core/rotation/candidate.h"
#include "core/rotation/filters.h"
#include "core/store/recording.h"

namespace lidlark::usecase {

namespace {

constexpr int bedtimeMinuteByDefault = 18 * 60 + 30; // checkin.md 4 [P]
constexpr int dayStartsAtMinute = 4 * 60;            // events.md 11

/// Past the home's bedtime hour. A menu asked for another day or part than now is judged by its
/// part alone: an evening asked for in the morning is not late.
bool isPastBedtime(const Workplace &workplace, const Family &family, DayPart asked, DayPart now)
{
    if (asked != now || asked.part != PartOfDay::Evening)
        return false;
    const int minute = localMinuteOfDay(workplace.clock.nowMs(), workplace.clock.offsetMinutes());
    const int bedtime = family.sheet ? family.sheet->bedtimeMinute.value_or(bedtimeMinuteByDefault)
                                     : bedtimeMinuteByDefault;
    return minute >= bedtime || minute < dayStartsAtMinute;
}

std::set<ActivityId> playedOn(const Family &family, Day day)
{
    std::set<ActivityId> played;
    for (const play::Play &play : family.plays) {
        if (play.when.day == day)
            played.insert(play.activity);
    }
    return played;
}

rotation::Question questionFor(const Workplace &workplace, const Family &family,
                               const MenuRequest &request, DayPart when, DayPart now)
{
    const bool guest = workplace.device.role == store::Role::Guest; // has no history
    rotation::Question question{.child = family.child, .today = when.day};
    question.part = when.part;
    question.pastBedtimeHour = isPastBedtime(workplace, family, when, now);
    question.kite = request.kite;
    question.minutes = request.minutes;
    question.filters = request.filters;
    question.offers = request.offers;
    question.without = request.without;
    if (family.revision)
        question.daysSinceIssue = std::max(0, when.day - family.revision->issued);
    if (!guest) {
        question.records = recordsOf(family, when.day);
        question.playedToday = playedOn(family, when.day);
        question.minutesThisWeek = minutesThisWeek(family, workplace.catalogue, when.day);
    }
    for (const store::ItemRow &row : family.items)
        question.stock[row.item] = row.low;
    return question;
}

} // namespace

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
    today.gated = gatedFor(today.family, workplace.catalogue, request.room, when.day);
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
        Outcome said = recording->say({journal::LaneKind::Home, menu.family.home.value},
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
    const safety::Gated gated = gatedFor(*family, workplace.catalogue, request.room, now->day);
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
