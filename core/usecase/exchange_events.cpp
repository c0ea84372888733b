#include "core/usecase/exchange_events.h"

#include "core/store/coverage.h"

#include <set>

namespace lidlark::usecase {

Result<int> takeEventsFrom(store::Database &from, Workplace &to,
                           const std::function<bool(const journal::Lane &)> &wanted)
{
    const auto events = store::EventRepository(from).all();
    if (!events)
        return events.error();
    Result<store::Recording> recording = store::Recording::begin(to.database, to.device, to.clock);
    if (!recording)
        return recording.error();
    store::AheadByLane ahead;
    std::set<journal::Lane> lanes;
    int taken = 0;
    for (const journal::Event &event : *events) {
        if (!wanted(event.lane))
            continue;
        const Result<bool> fresh = recording->receive(event);
        if (!fresh)
            return fresh.error();
        taken += *fresh ? 1 : 0;
        if (*fresh && event.kind != journal::Kind::Met)
            store::lookAtClock(ahead[event.lane], event, to.clock.nowMs());
        lanes.insert(event.lane);
    }
    if (Outcome done = store::sayMets(*recording, to.database, to.device, lanes, ahead); !done)
        return done.error();
    if (const Outcome done = recording->commit(); !done)
        return done.error();
    return taken;
}

} // namespace lidlark::usecase
