#include "core/sync/rightful.h"

#include "core/crew/rights.h"

#include <algorithm>

namespace lidlark::sync {

namespace {

/// Whether everything that a removal accepts of the device is here: nothing more can come.
Result<bool> isAllHere(store::SegmentRepository &segments, store::EventRepository &events,
                       const Sealing &sealing)
{
    const DeviceId &device = sealing.member.device;
    const journal::Lane &lane = sealing.epoch.lane;
    const std::uint64_t accepted = sealing.book.crew().acceptedUpTo(device, lane);
    const auto last = segments.lastCounter(sealing.book.box(), lane, device);
    const auto gap = events.hasGap(lane, device, accepted);
    if (!last || !gap)
        return last ? gap.error() : last.error();
    return *last >= accepted && !*gap;
}

} // namespace

Result<bool> isRightful(store::SegmentRepository &segments, store::EventRepository &events,
                        const Segment &segment, const Sealing &sealing)
{
    const crew::Crew &crew = sealing.book.crew();
    const bool handsOn = std::ranges::all_of(segment.events, [&](const journal::Event &event) {
        return crew::mayHandOn(crew, sealing.member, event.device);
    });
    const bool inTime =
        segment.header.firstCounter <= crew.acceptedUpTo(sealing.member.device, sealing.epoch.lane);
    if (!handsOn || !inTime)
        return false;
    // What is handed on or told again has no counter that would tell when: it may say any.
    if (segment.header.content == ownEvents || !crew.removed(sealing.member.device))
        return true;
    const auto all = isAllHere(segments, events, sealing);
    return all ? Result<bool>(!*all) : all;
}

} // namespace lidlark::sync
