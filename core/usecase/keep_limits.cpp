#include "core/usecase/keep_limits.h"

#include "core/store/recording.h"

#include <algorithm>
#include <functional>

namespace lidlark::usecase {

Day crewDay(std::vector<Day> reached, Day today)
{
    if (reached.empty())
        return today;
    std::ranges::sort(reached, std::greater{});
    return reached.size() > 1 ? reached[1] : std::min(today, reached.front() + believedDays);
}

Outcome expireCheckIns(Workplace &workplace)
{
    store::EventRepository events(workplace.database);
    const auto today = store::todayOf(workplace.clock);
    if (!today)
        return today.error();
    const auto any = events.anyBefore(journal::LaneKind::CheckIns, today->day - checkInDays);
    if (!any || !*any) // the days of all devices are read only where it matters
        return any ? Outcome(Done{}) : Outcome(any.error());
    const auto reached = events.latestDays();
    if (!reached)
        return reached.error();
    auto recording = store::Recording::begin(workplace.database, workplace.device, workplace.clock);
    if (!recording)
        return recording.error();
    const Day first = crewDay(*reached, today->day) - checkInDays;
    if (Outcome done = recording->erase(journal::LaneKind::CheckIns, first); !done)
        return done;
    return recording->commit();
}

} // namespace lidlark::usecase
