#include "core/sync/pass_on.h"

#include "core/store/event_repository.h"

#include <algorithm>

namespace lidlark::sync {

namespace {

using journal::Event;

bool hasSaid(const std::vector<Event> &events, const DeviceId &writer, const DeviceId &removed)
{
    return std::ranges::any_of(events, [&](const Event &event) {
        const auto removal = crew::readRemoval(event);
        return removal && event.device == writer && removal->device == removed;
    });
}

bool mayRemove(const crew::Crew &crew, const DeviceId &one, const DeviceId &other)
{
    const crew::Member *first = crew.member(one);
    const crew::Member *second = crew.member(other);
    return first != nullptr && second != nullptr && crew::mayRemove(*first, *second);
}

/// Whether all who removed @p device are such as it could remove itself, and it was not heard to.
bool couldAnswer(const crew::Crew &crew, const std::vector<Event> &events, const DeviceId &device)
{
    return std::ranges::all_of(events, [&](const Event &event) {
        const auto removal = crew::readRemoval(event);
        if (!removal || removal->device != device || !mayRemove(crew, event.device, device))
            return true;
        return event.device != device && mayRemove(crew, device, event.device) &&
               !hasSaid(events, device, event.device);
    });
}

} // namespace

Outcome passOn(Post &post, const CrewBook &book, store::Recording &recording)
{
    const crew::Member *me = book.me();
    if (me == nullptr || me->role == crew::Role::Guest)
        return Done{};
    const journal::Lane lane{journal::LaneKind::Box, book.box()};
    const auto events = store::EventRepository(post.database).ofSubject({lane, "members"});
    if (!events)
        return events.error();
    for (const auto &[device, accepted] : book.crew().gone()) {
        if (!couldAnswer(book.crew(), *events, device) || hasSaid(*events, me->device, device))
            continue;
        Outcome done = recording.say(lane, journal::Kind::MemberRemoved,
                                     crew::fieldsOf(crew::Removal{device, accepted}));
        if (!done)
            return done;
    }
    return Done{};
}

} // namespace lidlark::sync
