#include "core/sync/sharing_state.h"

#include "core/store/crew_repository.h"
#include "core/store/device_repository.h"
#include "core/store/event_repository.h"
#include "core/store/segment_repository.h"
#include "core/sync/consent.h"
#include "core/sync/crew_lanes.h"

#include <algorithm>

namespace lidlark::sync {

namespace {

using journal::Kind;

constexpr auto sharedKey = "crew.shared";

/// What people say; the rest is written by the phone for its own order.
bool isNote(const journal::Event &event)
{
    return event.kind != Kind::Met && event.kind != Kind::Epoch && event.kind != Kind::Member &&
           event.kind != Kind::MemberRemoved && event.kind != Kind::Offered;
}

Result<int> waitingOf(store::Database &database, const std::string &box, const crew::Crew &crew,
                      const DeviceId &device)
{
    int waiting = 0;
    for (const journal::Lane &lane : lanesOf(box, crew)) {
        const auto shared = store::SegmentRepository(database).lastSharedCounter(box, lane, device);
        const auto since =
            shared ? store::EventRepository(database).ofDeviceAfter(lane, device, *shared)
                   : Result<store::OwnRun>(shared.error());
        if (!since)
            return since.error();
        waiting += static_cast<int>(std::ranges::count_if(since->events, isNote));
    }
    return waiting;
}

} // namespace

Result<SharingState> sharingState(store::Database &database)
{
    SharingState state;
    const auto device = store::DeviceRepository(database).device();
    const auto crews = store::CrewRepository(database).all();
    const auto consent = consentIn(database);
    const auto shared = store::DeviceRepository(database).localNumber(sharedKey);
    if (!device || !crews)
        return device ? crews.error() : device.error();
    if (!consent || !shared)
        return consent ? shared.error() : consent.error();
    state.agreed = consent->has_value();
    if (*shared > 0)
        state.sharedMs = *shared;
    if (!*device)
        return state;
    for (const auto &[box, crew] : *crews) {
        state.inCrew = state.inCrew || crew.has((*device)->id);
        const auto waiting = waitingOf(database, box, crew, (*device)->id);
        if (!waiting)
            return waiting.error();
        state.waiting += *waiting;
    }
    return state;
}

Outcome noteShared(store::Database &database, std::int64_t nowMs)
{
    return store::DeviceRepository(database).setLocalState(sharedKey, std::to_string(nowMs));
}

} // namespace lidlark::sync
