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
    const auto today = store::todayOf(workplace.clock);
    const auto reached = store::EventRepository(workplace.database).latestDays();
    if (!today || !reached)
        return today ? reached.error() : today.error();
    auto recording = store::Recording::begin(workplace.database, workplace.device, workplace.clock);
    if (!recording)
        return recording.error();
    const Day first = crewDay(*reached, today->day) - checkInDays;
    if (Outcome done = recording->erase(journal::Kind::CheckIn, first); !done)
        return done;
    return recording->commit();
}

} // namespace lidlark::usecase
