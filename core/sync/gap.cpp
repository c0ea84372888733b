#include "core/sync/gap.h"

#include <algorithm>

namespace lidlark::sync {

namespace {

bool overlap(const SegmentHeader &one, const SegmentHeader &other)
{
    return one.firstCounter < other.firstCounter + other.events &&
           other.firstCounter < one.firstCounter + one.events;
}

} // namespace

Result<Standing> standingInGap(store::EventRepository &events, const Segment &segment,
                               const Writing &whose, std::span<const Fetched> caught)
{
    const bool first = std::ranges::any_of(caught, [&](const Fetched &other) {
        return other.device == whose.device && other.epoch.lane == whose.lane &&
               overlap(other.segment.header, segment.header);
    });
    if (first)
        return Standing::NotYet;
    for (const journal::Event &event : segment.events) {
        const auto taken = events.isTakenByOther(event);
        if (!taken)
            return taken.error();
        if (*taken)
            return Standing::Forked;
    }
    return Standing::Next;
}

} // namespace lidlark::sync
