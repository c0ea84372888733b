#include "core/journal/latest.h"

#include <algorithm>
#include <tuple>

namespace lidlark::journal {

const Event *latestOf(std::span<const Event> events, Kind kind, const Seen &seen)
{
    const Event *latest = nullptr;
    for (const Event &candidate : events) {
        if (candidate.kind != kind)
            continue;
        // What replaces a value is most often said last.
        const bool replaced = std::any_of(events.rbegin(), events.rend(), [&](const Event &other) {
            return other.kind == kind && seen.saw(other, candidate);
        });
        if (replaced)
            continue;
        if (latest == nullptr ||
            std::tie(latest->instant, latest->device, latest->counter) <
                std::tie(candidate.instant, candidate.device, candidate.counter))
            latest = &candidate;
    }
    return latest;
}

} // namespace lidlark::journal
