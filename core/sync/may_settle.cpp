#include "core/sync/may_settle.h"

#include "core/crew/clinic_crew.h"
#include "core/store/event_repository.h"

#include <algorithm>

namespace lidlark::sync {

namespace {

using journal::Event;
using journal::Lane;
using journal::LaneKind;

/// By which its writer let itself in: who founded a crew.
bool isFounding(const Event &event)
{
    const auto member = crew::readMember(event);
    return member && member->device == event.device;
}

/// Whoever was never in the clinic's crew does not know when it was founded, to the millisecond.
Outcome mayComeIntoClinic(Post &post, const Welcome &welcome)
{
    store::EventRepository events(post.database);
    const std::string scope(crew::clinicCrew);
    const auto kept = events.subjectsOf({LaneKind::Clinic, scope});
    const auto known = events.ofSubject({{LaneKind::Box, scope}, "members"});
    if (!kept || !known)
        return kept ? known.error() : kept.error();
    if (kept->empty() && known->empty())
        return Done{};
    const bool same = std::ranges::any_of(*known, [&welcome](const Event &event) {
        return isFounding(event) &&
               std::ranges::find(welcome.events, event) != welcome.events.end();
    });
    return same ? Outcome(Done{}) : Outcome(Error{ErrorCode::Invalid, "code: another clinic's"});
}

} // namespace

Outcome maySettle(Post &post, const Welcome &welcome)
{
    if (welcome.member.device != post.device.id)
        return Error{ErrorCode::Invalid, "welcome: to another phone"};
    const Lane told{LaneKind::Box, welcome.box};
    const bool ownCrew = std::ranges::all_of(welcome.events, [&told](const Event &event) {
        return event.lane == told && crew::isOfTheCrew(event);
    });
    if (!ownCrew)
        return Error{ErrorCode::Invalid, "welcome: about more than its crew"};
    return welcome.box == crew::clinicCrew ? mayComeIntoClinic(post, welcome) : Outcome(Done{});
}

} // namespace lidlark::sync
