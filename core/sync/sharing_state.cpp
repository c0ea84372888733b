#include "core/sync/sharing_state.h"

#include "core/store/crew_repository.h"
#include "core/store/device_repository.h"
#include "core/store/event_repository.h"
#include "core/store/segment_repository.h"
#include "core/sync/consent.h"
#include "core/sync/crew_lanes.h"
#include "core/wording/day_words.h"

#include <algorithm>
#include <charconv>

namespace lidlark::sync {

namespace {

using journal::Kind;
using wording::inDigits;
using wording::say;
using wording::sayCounted;
using wording::Sentence;

constexpr auto sharedKey = "crew.shared";
constexpr std::int64_t minutesOfDay = msPerDay / msPerMinute;

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
        const auto shared =
            store::SegmentRepository(database).lastSharedCounter(box, lane, device);
        const auto since = shared ? store::EventRepository(database).ofDeviceAfter(lane, device, *shared)
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
    const auto shared = store::DeviceRepository(database).localState(sharedKey);
    if (!device || !crews)
        return device ? crews.error() : device.error();
    if (!consent || !shared)
        return consent ? shared.error() : consent.error();
    state.agreed = consent->has_value();
    std::int64_t ms = 0;
    if (*shared)
        std::from_chars((*shared)->data(), (*shared)->data() + (*shared)->size(), ms);
    if (ms > 0)
        state.sharedMs = ms;
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

Sentence sentenceFor(const SharingState &state, std::int64_t nowMs, int offsetMinutes)
{
    if (!state.inCrew || !state.agreed)
        return {say("On this phone only"), {}};
    if (state.waiting == 1)
        return {say("One note waits on this phone"), {}};
    if (state.waiting > 0)
        return {sayCounted("%1 notes wait on this phone"), {inDigits(state.waiting)}};
    if (!state.sharedMs)
        return {say("On this phone only so far"), {}};
    const DayPart then = dayPartAt(*state.sharedMs, offsetMinutes);
    const Day today = dayPartAt(nowMs, offsetMinutes).day;
    if (then.day == today) {
        const std::int64_t minute = (*state.sharedMs / msPerMinute) + offsetMinutes;
        const auto ofDay = static_cast<int>(((minute % minutesOfDay) + minutesOfDay) % minutesOfDay);
        return {say("Shared at %1"), {wording::TimeOfDay{ofDay}}};
    }
    if (then.day == today - 1)
        return {say("Shared yesterday"), {}};
    if (then.day < today && today - then.day < 7)
        return {say("Shared %1"), {wording::onWeekdayWords(then.day)}};
    return {say("Shared on %1"), {wording::dateWords(then.day)}};
}

} // namespace lidlark::sync
