#include "core/crew/crew.h"

#include "core/crew/removals.h"

#include <algorithm>
#include <functional>
#include <limits>
#include <tuple>
#include <vector>

namespace lidlark::crew {

namespace {

using journal::Event;
using journal::Seen;

/// A letting-in as it was written.
struct Let {
    const Event *event;
    Member member;
};

/// Of several letting-ins of one device the one that counts: what no other has seen, and of those
/// the last. Lies about what was seen may go round in a circle: then all of it is as if at the same
/// time.
const Let &latestOf(std::vector<const Let *> lets, const Seen &seen)
{
    const auto isSeen = [&](const Let *earlier) {
        return std::ranges::any_of(lets, [&](const Let *later) {
            return seen.saw(*later->event, *earlier->event) &&
                   !seen.saw(*earlier->event, *later->event);
        });
    };
    std::vector<const Let *> heads;
    std::ranges::copy_if(lets, std::back_inserter(heads), std::not_fn(isSeen));
    const auto &among = heads.empty() ? lets : heads;
    return **std::ranges::max_element(among, {}, [](const Let *let) {
        const Event &event = *let->event;
        return std::tie(event.instant, event.device, event.counter, event.fields);
    });
}

/// A letting-in of @p device by another.
bool isBy(const Let &let, const DeviceId &device)
{
    return let.member.device == device && let.event->device != device;
}

/// Whether @p device might let others in, by what others say of it: what it says of itself gives it
/// no right over who let it in.
bool mayHaveRight(const std::vector<Let> &lets, const DeviceId &device)
{
    const bool known =
        std::ranges::any_of(lets, [&device](const Let &let) { return isBy(let, device); });
    return std::ranges::any_of(lets, [&](const Let &let) {
        return let.member.device == device && letsIn(let.member.role) &&
               (!known || isBy(let, device));
    });
}

/// The letting-ins that count, from who let itself in and nobody else did, on: the same ones in any
/// order, since each only adds to who may let in. @param counts of a letting-in: whether its writer
/// could still write it.
template <class Counts>
std::vector<const Let *> rightful(const std::vector<Let> &lets, Counts counts)
{
    const auto byOther = [&lets](const DeviceId &device) {
        return std::ranges::any_of(lets, [&](const Let &let) {
            return isBy(let, device) && mayHaveRight(lets, let.event->device);
        });
    };
    std::set<const Let *> taken;
    std::set<DeviceId> letting;
    for (bool grew = true; grew;) {
        grew = false;
        for (const Let &let : lets) {
            const bool itself = let.event->device == let.member.device;
            const bool founder = itself && letsIn(let.member.role) && !byOther(let.member.device);
            const bool letIn = !itself && letting.contains(let.event->device) && counts(*let.event);
            if ((!founder && !letIn) || !taken.insert(&let).second)
                continue;
            if (letsIn(let.member.role))
                letting.insert(let.member.device);
            grew = true;
        }
    }
    return {taken.begin(), taken.end()};
}

/// Who is in by @p lets, each as let in last.
template <class Counts>
std::map<DeviceId, Let> closure(const std::vector<Let> &lets, const Seen &seen, Counts counts)
{
    std::map<DeviceId, std::vector<const Let *>> byDevice;
    for (const Let *let : rightful(lets, counts))
        byDevice[let->member.device].push_back(let);
    std::map<DeviceId, Let> in;
    for (const auto &[device, all] : byDevice)
        in.emplace(device, latestOf(all, seen));
    return in;
}

std::vector<WrittenRemoval> writtenRemovals(std::span<const Event> events,
                                            const std::map<DeviceId, Let> &in)
{
    std::vector<WrittenRemoval> removals;
    for (const Event &event : events) {
        const auto removal = readRemoval(event);
        if (!removal)
            continue;
        const auto writer = in.find(event.device);
        const auto target = in.find(removal->device);
        if (writer != in.end() && target != in.end() &&
            mayRemove(writer->second.member, target->second.member))
            removals.push_back({&event, *removal});
    }
    return removals;
}

/// Who of @p everybody is in no more where @p removal stands: let in past what it accepts.
std::set<DeviceId> notIn(const std::vector<Let> &lets, const Seen &seen, const Removal &removal,
                         const std::map<DeviceId, Let> &everybody)
{
    const auto rest = closure(lets, seen, [&removal](const Event &event) {
        const auto upTo = removal.accepted.find(event.lane);
        return event.device != removal.device || upTo == removal.accepted.end() ||
               event.counter <= upTo->second;
    });
    std::set<DeviceId> out;
    for (const auto &[device, let] : everybody) {
        if (!rest.contains(device))
            out.insert(device);
    }
    return out;
}

/// Whether somebody who is on neither side said the same: who may not remove anybody says with it
/// that this was heard, and no answer yet.
bool isPassedOn(const WrittenRemoval &written, std::span<const Event> events,
                const std::map<DeviceId, Let> &in)
{
    return std::ranges::any_of(events, [&](const Event &event) {
        const auto writer = in.find(event.device);
        if (writer == in.end() || writer->second.member.role == Role::Guest ||
            event.device == written.event->device || event.device == written.removal.device ||
            written.others.contains(event.device))
            return false;
        const auto removal = readRemoval(event);
        return removal && removal->device == written.removal.device;
    });
}

/// The least of what any of them accepts.
std::map<DeviceId, Accepted> goneBy(const std::vector<WrittenRemoval> &removals)
{
    std::map<DeviceId, Accepted> gone;
    for (const WrittenRemoval &written : removals) {
        Accepted &accepted = gone[written.removal.device];
        for (const auto &[lane, counter] : written.removal.accepted) {
            const auto known = accepted.try_emplace(lane, counter).first;
            known->second = std::min(known->second, counter);
        }
    }
    return gone;
}

} // namespace

bool mayRemove(const Member &writer, const Member &target)
{
    return writer.device == target.device || writer.role == Role::Therapist ||
           (writer.role == Role::Parent && !target.home.empty() && writer.home == target.home);
}

Crew Crew::fold(std::span<const Event> events, const Seen &seen)
{
    std::vector<Let> lets;
    for (const Event &event : events) {
        if (auto member = readMember(event))
            lets.push_back({&event, std::move(*member)});
    }
    const auto everybody = closure(lets, seen, [](const Event &) { return true; });
    auto removals = writtenRemovals(events, everybody);
    for (WrittenRemoval &written : removals) {
        written.others = notIn(lets, seen, written.removal, everybody);
        written.passedOn = isPassedOn(written, events, everybody);
    }
    Crew crew;
    crew.m_gone = goneBy(standingRemovals(removals, seen));
    const auto counts = [&crew](const Event &event) {
        return event.counter <= crew.acceptedUpTo(event.device, event.lane);
    };
    for (auto &[device, let] : closure(lets, seen, counts))
        crew.m_members.emplace(device, let.member);
    return crew;
}

const Member *Crew::member(const DeviceId &device) const
{
    const auto found = m_members.find(device);
    return found == m_members.end() ? nullptr : &found->second;
}

bool Crew::has(const DeviceId &device) const
{
    return m_members.contains(device) && !m_gone.contains(device);
}

std::uint64_t Crew::acceptedUpTo(const DeviceId &device, const journal::Lane &lane) const
{
    constexpr std::uint64_t all = std::numeric_limits<std::uint64_t>::max();
    const auto removal = m_gone.find(device);
    if (removal == m_gone.end())
        return all;
    const auto upTo = removal->second.find(lane);
    return upTo == removal->second.end() ? all : upTo->second;
}

std::vector<Member> Crew::present() const
{
    std::vector<Member> members;
    for (const auto &[device, member] : m_members) {
        if (!m_gone.contains(device))
            members.push_back(member);
    }
    return members;
}

bool Crew::hasTherapist() const
{
    return std::ranges::any_of(
        m_members, [](const auto &entry) { return entry.second.role == Role::Therapist; });
}

void Crew::put(Member member)
{
    const DeviceId device = member.device;
    m_members.insert_or_assign(device, std::move(member));
}

} // namespace lidlark::crew
