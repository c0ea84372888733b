#include "core/usecase/exchange_events.h"

#include "core/journal/clock_gaps.h"
#include "core/journal/seen.h"
#include "core/store/recording.h"

#include <algorithm>
#include <map>
#include <set>

namespace lidlark::usecase {

namespace {

using Held = std::map<std::string, std::set<std::uint64_t>>; ///< device -> counters

/// Highest counter held without a gap, by device.
std::map<std::string, std::uint64_t> withoutGap(const Held &held)
{
    std::map<std::string, std::uint64_t> covered;
    for (const auto &[device, counters] : held) {
        std::uint64_t upTo = 0;
        while (counters.contains(upTo + 1))
            ++upTo;
        if (upTo > 0)
            covered[device] = upTo;
    }
    return covered;
}

/// Notes a clock that is further ahead than a phone's own mistake (events.md 3.4).
void lookAtClock(journal::Ahead &ahead, const journal::Event &event, std::int64_t nowMs)
{
    const std::int64_t gap = event.instant.ms - nowMs;
    if (gap > journal::leastGapMs)
        ahead[event.device.value] = std::max(ahead[event.device.value], gap);
}

Result<std::map<journal::Lane, Held>> heldBy(store::Database &database)
{
    const auto events = store::EventRepository(database).all();
    if (!events)
        return events.error();
    std::map<journal::Lane, Held> held;
    for (const journal::Event &event : *events)
        held[event.lane][event.device.value].insert(event.counter);
    return held;
}

} // namespace

Result<int> takeEventsFrom(store::Database &from, Workplace &to,
                           const std::function<bool(const journal::Lane &)> &wanted)
{
    const auto events = store::EventRepository(from).all();
    auto held = heldBy(to.database);
    if (!events || !held)
        return events ? held.error() : events.error();
    Result<store::Recording> recording = store::Recording::begin(to.database, to.device, to.clock);
    if (!recording)
        return recording.error();
    std::map<journal::Lane, journal::Ahead> grew;
    int taken = 0;
    for (const journal::Event &event : *events) {
        if (!wanted(event.lane))
            continue;
        const bool fresh = (*held)[event.lane][event.device.value].insert(event.counter).second;
        if (const Outcome done = recording->receive(event); !done)
            return done.error();
        taken += fresh ? 1 : 0;
        if (fresh && event.kind != journal::Kind::Met)
            lookAtClock(grew[event.lane], event, to.clock.nowMs());
    }
    for (const auto &[lane, ahead] : grew) {
        if (lane.kind == journal::LaneKind::CheckIns)
            continue; // a `met` there would date the check-ins around it
        auto covered = withoutGap((*held)[lane]);
        covered.erase(to.device.id.value);
        const Outcome done =
            recording->say(lane, journal::Kind::Met, journal::metFields(covered, ahead));
        if (!done)
            return done.error();
    }
    if (const Outcome done = recording->commit(); !done)
        return done.error();
    return taken;
}

} // namespace lidlark::usecase
