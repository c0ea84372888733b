#include "core/usecase/menu_question.h"

#include "core/usecase/box_items.h"

#include <algorithm>

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

/// Near its date, and nothing speaks against it: a lost piece, a washing that is due
/// (activities.md 2.2, "never for anything with a hazard note").
bool isWorthUsingSoon(const BoxItem &item, const Family &family)
{
    const bool missing =
        std::any_of(family.losses.begin(), family.losses.end(),
                    [&item](const store::LossRow &loss) { return loss.item == item.row.item; });
    return item.freshness.useSoon && !item.row.care.mouthed && !missing;
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

} // namespace

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
        question.daysSinceIssue = std::max(0, when.day - family.revision->begun);
    if (!guest) {
        question.records = recordsOf(family, when.day);
        question.playedToday = playedOn(family, when.day);
        question.minutesThisWeek = minutesThisWeek(family, workplace.catalogue, when.day);
    }
    for (const BoxItem &item : boxItemsOf(family, workplace.catalogue, when.day)) {
        const bool stays = !isToTakeOut(family, item.row.item);
        question.stock[item.row.item] = stays ? item.freshness.usable : 0;
        question.useSoon[item.row.item] = stays && isWorthUsingSoon(item, family);
    }
    return question;
}

} // namespace lidlark::usecase
