#include "core/crew/crew.h"

#include "core/crew/removals.h"

#include <algorithm>
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
    /// Among those of one device: of several that count, the last one stands.
    std::size_t rank = 0;
};

auto writing(const Let &let)
{
    const Event &event = *let.event;
    return std::tie(event.instant, event.device, event.counter, event.fields);
}

/// Ranks the lettings-in of one device from the last one on: of those that no other has seen, the
/// last written. Two at a time would not do: where clocks are wrong, three can each be later than
/// the next.
void rank(std::vector<Let *> lets, const Seen &seen)
{
    std::ranges::reverse(lets);
    for (auto next = lets.begin(); next != lets.end(); ++next) {
        const auto isSeenByNone = [&](const Let *let) {
            return std::none_of(next, lets.end(), [&](const Let *other) {
                return seen.saw(*other->event, *let->event);
            });
        };
        const auto last = std::find_if(next, lets.end(), isSeenByNone);
        std::rotate(next, last, last + 1);
        (*next)->rank = static_cast<std::size_t>(lets.end() - next);
    }
}

/// All of them, in an order that is the same whatever that of @p events, and ranked.
std::vector<Let> letsAmong(std::span<const Event> events, const Seen &seen)
{
    std::vector<Let> lets;
    for (const Event &event : events) {
        if (auto member = readMember(event))
            lets.push_back({&event, std::move(*member)});
    }
    std::ranges::sort(lets, {}, writing);
    std::map<DeviceId, std::vector<Let *>> byDevice;
    for (Let &let : lets)
        byDevice[let.member.device].push_back(&let);
    for (const auto &[device, ofDevice] : byDevice)
        rank(ofDevice, seen);
    return lets;
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

/// Who is in by @p lets, from who let itself in and nobody else did, on. @param counts of a
/// letting-in: whether its writer could still write it.
template <class Counts> std::map<DeviceId, Let> closure(const std::vector<Let> &lets, Counts counts)
{
    const auto byOther = [&lets](const DeviceId &device) {
        return std::ranges::any_of(lets, [&](const Let &let) {
            return isBy(let, device) && mayHaveRight(lets, let.event->device);
        });
    };
    std::map<DeviceId, Let> in;
    for (bool grew = true; grew;) {
        grew = false;
        for (const Let &let : lets) {
            const bool itself = let.event->device == let.member.device;
            const auto writer = in.find(let.event->device);
            const bool founder = itself && letsIn(let.member.role) && !byOther(let.member.device);
            const bool let_in = !itself && writer != in.end() &&
                                letsIn(writer->second.member.role) && counts(*let.event);
            if (!founder && !let_in)
                continue;
            const auto known = in.find(let.member.device);
            if (known != in.end() && let.rank <= known->second.rank)
                continue;
            in.insert_or_assign(let.member.device, let);
            grew = true;
        }
    }
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
std::set<DeviceId> notIn(const std::vector<Let> &lets, const Removal &removal,
                         const std::map<DeviceId, Let> &everybody)
{
    const auto rest = closure(lets, [&removal](const Event &event) {
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
    const std::vector<Let> lets = letsAmong(events, seen);
    const auto everybody = closure(lets, [](const Event &) { return true; });
    auto removals = writtenRemovals(events, everybody);
    for (WrittenRemoval &written : removals)
        written.others = notIn(lets, written.removal, everybody);
    Crew crew;
    crew.m_gone = goneBy(standingRemovals(removals, seen));
    const auto counts = [&crew](const Event &event) {
        return event.counter <= crew.acceptedUpTo(event.device, event.lane);
    };
    for (auto &[device, let] : closure(lets, counts))
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
