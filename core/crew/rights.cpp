#include "core/crew/rights.h"

#include "core/crew/clinic_crew.h"
#include "core/journal/lane_home.h"

#include <algorithm>
#include <array>

namespace lidlark::crew {

namespace {

using journal::Kind;
using journal::Lane;
using journal::LaneKind;

constexpr std::array guestKinds{Kind::Met,      Kind::Outcome,      Kind::Exception, Kind::Found,
                                Kind::Opened,   Kind::FloorChecked, Kind::LeftOpen,  Kind::Checked,
                                Kind::Hygiene,  Kind::PlayStarted,  Kind::PlayEnded, Kind::Reaction,
                                Kind::TakenBack};

bool ofHome(const Member &member, const Lane &lane)
{
    return !member.home.empty() && member.home.value == journal::homeOf(lane);
}

bool mayWriteInBox(const Member &member, Kind kind, bool hasTherapist)
{
    switch (kind) {
    case Kind::MemberRemoved:
        return true; // whose, the fold of the crew decides: everybody may leave
    case Kind::Epoch:
        return member.role != Role::Guest;
    case Kind::Member:
    case Kind::Child:
        return letsIn(member.role);
    case Kind::Revision:
        return member.role == Role::Therapist || (member.role == Role::Parent && !hasTherapist);
    case Kind::GradingPin:
    case Kind::VideoPlan:
    case Kind::OwnEntry:
        return member.role == Role::Therapist;
    default:
        return member.role != Role::Guest || guestMaySay(kind);
    }
}

/// The home's own is the parents' to erase; in the box's lane and the goals the therapist's too. A
/// copy is whoever's who may copy: what it was made from stays.
bool mayErase(const Member &member, const Lane &lane)
{
    if (lane.kind == LaneKind::Shared)
        return ofHome(member, lane);
    if (lane.kind == LaneKind::Box || lane.kind == LaneKind::Goals)
        return letsIn(member.role);
    return member.role == Role::Parent;
}

} // namespace

bool guestMaySay(Kind kind)
{
    return std::find(guestKinds.begin(), guestKinds.end(), kind) != guestKinds.end();
}

bool vouches(const Member &member)
{
    return letsIn(member.role);
}

bool mayHandOn(const Crew &crew, const Member &member, const DeviceId &writer)
{
    if (writer == member.device || vouches(member))
        return true;
    // What it was, a newcomer says itself: it gains nothing by saying that it was somebody else.
    const Member *before = crew.member(writer);
    return writer == member.was && before != nullptr && before->role == member.role &&
           before->home == member.home;
}

bool mayRead(const Member &member, const Lane &lane)
{
    const bool guest = member.role == Role::Guest;
    const bool therapist = member.role == Role::Therapist;
    switch (lane.kind) {
    case LaneKind::Box:
        return true;
    case LaneKind::Safety:
        return therapist || ofHome(member, lane);
    case LaneKind::Home:
    case LaneKind::CheckIns:
        return !guest && !therapist && ofHome(member, lane);
    case LaneKind::Goals:
        return therapist || member.role == Role::Parent;
    case LaneKind::Shared:
        return therapist || (!guest && ofHome(member, lane));
    case LaneKind::Notes:
        return false; // its author's alone, until one is sent
    case LaneKind::Clinic:
        return therapist;
    }
    return false;
}

bool mayWrite(const Member &member, const Lane &lane, Kind kind, bool hasTherapist)
{
    if (kind == Kind::Erased)
        return mayRead(member, lane) && mayErase(member, lane);
    const bool guest = member.role == Role::Guest;
    switch (lane.kind) {
    case LaneKind::Box:
        return mayWriteInBox(member, kind, hasTherapist);
    case LaneKind::Safety:
        if (kind == Kind::Permission)
            return member.role == Role::Therapist;
        return mayRead(member, lane) && (!guest || kind == Kind::Met);
    case LaneKind::Home:
        return mayRead(member, lane) || (guest && ofHome(member, lane) && guestMaySay(kind));
    case LaneKind::CheckIns:
    case LaneKind::Goals:
    case LaneKind::Clinic:
        return mayRead(member, lane);
    case LaneKind::Shared: // the therapist reads only
        return mayRead(member, lane) && ofHome(member, lane);
    case LaneKind::Notes:
        return !guest;
    }
    return false;
}

bool isAbout(const std::string &box, const Crew &crew, const Lane &lane)
{
    if (lane.kind == LaneKind::Box || lane.kind == LaneKind::Goals || lane.kind == LaneKind::Clinic)
        return lane.scope == box;
    const std::string home = journal::homeOf(lane);
    return box != clinicCrew && !home.empty() &&
           std::ranges::any_of(crew.everMembers(), [&home](const auto &entry) {
               return entry.second.home.value == home;
           });
}

bool counts(const Crew &crew, const journal::Event &event)
{
    if (tellsTheClinicsCrew(event.lane) && !mayStandInTheClinicsCrew(event))
        return false;
    const Member *member = crew.member(event.device);
    if (member == nullptr)
        return true;
    if (event.counter > crew.acceptedUpTo(event.device, event.lane))
        return false;
    if (member->role == Role::Guest && member->until && event.when.day > *member->until)
        return false;
    return mayWrite(*member, event.lane, event.kind, crew.hasTherapist());
}

std::set<DeviceId> entitledTo(const Crew &crew, const Lane &lane, Day today)
{
    std::set<DeviceId> entitled;
    for (const Member &member : crew.present()) {
        const bool over = member.role == Role::Guest && member.until && today > *member.until;
        if (!over && mayRead(member, lane))
            entitled.insert(member.device);
    }
    return entitled;
}

} // namespace lidlark::crew
