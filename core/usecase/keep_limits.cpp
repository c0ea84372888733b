#include "core/usecase/keep_limits.h"

#include "core/store/recording.h"
#include "core/usecase/share_plays.h"

#include <algorithm>
#include <functional>

namespace lidlark::usecase {

namespace {

using journal::Kind;
using journal::LaneKind;

/// What may be kept no longer on @p day. Who has seen what, and the words that something is erased,
/// stay: later ones rest on them.
std::vector<store::Outdated> outdatedOn(Day day)
{
    return {{LaneKind::CheckIns, {Kind::CheckIn, Kind::TakenBack}, day - checkInDays},
            {LaneKind::Home,
             {Kind::PlayStarted, Kind::PlayEnded, Kind::Reaction, Kind::Offered, Kind::Planned,
              Kind::TakenBack},
             day - playDays},
            // A copy is kept no longer than what it was made from.
            {LaneKind::Shared, {Kind::PlayStarted, Kind::Reaction}, day - playDays}};
}

Result<bool> anyOf(store::EventRepository &events, const std::vector<store::Outdated> &all)
{
    for (const store::Outdated &outdated : all) {
        auto any = events.any(outdated);
        if (!any || *any)
            return any;
    }
    return false;
}

} // namespace

Day crewDay(std::vector<Day> reached, Day today)
{
    if (reached.empty())
        return today;
    std::ranges::sort(reached, std::greater{});
    return reached.size() > 1 ? reached[1] : std::min(today, reached.front() + believedDays);
}

Outcome keepLimits(Workplace &workplace)
{
    const auto today = store::todayOf(workplace.clock);
    if (!today)
        return today.error();
    store::EventRepository events(workplace.database);
    const auto old = anyOf(events, outdatedOn(today->day));
    if (!old || !*old) // the days of all devices are read only where it matters
        return old ? Outcome(Done{}) : Outcome(old.error());
    const auto reached = events.latestDays();
    if (!reached)
        return reached.error();
    auto recording = store::Recording::begin(workplace.database, workplace.device, workplace.clock);
    if (!recording)
        return recording.error();
    for (const store::Outdated &outdated : outdatedOn(crewDay(*reached, today->day))) {
        if (Outcome done = recording->erase(outdated); !done)
            return done;
    }
    return commitWithCopies(workplace, *recording);
}

} // namespace lidlark::usecase
