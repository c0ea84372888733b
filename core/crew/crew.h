#pragma once

#include "core/crew/member.h"
#include "core/journal/seen.h"

#include <map>
#include <optional>
#include <set>
#include <span>

namespace lidlark::crew {

/// All who were ever let into the crew of one box, and who of them was removed.
class Crew
{
public:
    /// Members = added minus removed; removal wins over anything concurrent, and a removed id never
    /// returns (events.md 10). Who founded the crew let itself in; everybody else was let in by a
    /// parent or the therapist. A parent removes devices of the own home, the therapist any, and
    /// everybody their own. What a removed device wrote past the counter that its removal accepts
    /// counts no more, so a thief lets nobody in and nobody out; removals that would so void each
    /// other in a circle all stand. But not against one that others had heard by then, and passed
    /// on: what whom it removes says against who wrote it, past what it accepts, falls.
    /// @param events of the box lane's subject "members", in any order.
    static Crew fold(std::span<const journal::Event> events, const journal::Seen &seen);

    /// Nobody was ever let in: a phone by itself.
    [[nodiscard]] bool empty() const { return m_members.empty(); }
    /// As it was let in, also when it was removed since.
    [[nodiscard]] const Member *member(const DeviceId &device) const;
    [[nodiscard]] bool removed(const DeviceId &device) const { return m_gone.contains(device); }
    /// Let in and not removed.
    [[nodiscard]] bool has(const DeviceId &device) const;
    /// The highest counter of @p lane that is accepted from @p device.
    [[nodiscard]] std::uint64_t acceptedUpTo(const DeviceId &device,
                                             const journal::Lane &lane) const;
    /// Everybody who was ever let in, by device.
    [[nodiscard]] const std::map<DeviceId, Member> &everMembers() const { return m_members; }
    [[nodiscard]] const std::map<DeviceId, Accepted> &gone() const { return m_gone; }
    /// Those who are in now.
    [[nodiscard]] std::vector<Member> present() const;
    /// A therapist was ever in it: lid lists are theirs.
    [[nodiscard]] bool hasTherapist() const;

    /// From rows that were folded before.
    void put(Member member);
    void put(const DeviceId &device, Accepted accepted) { m_gone[device] = std::move(accepted); }

private:
    std::map<DeviceId, Member> m_members;
    std::map<DeviceId, Accepted> m_gone;
};

/// Whether @p writer may take @p target out: a parent the devices of the own home, the therapist
/// any, everybody their own (events.md 10).
bool mayRemove(const Member &writer, const Member &target);

} // namespace lidlark::crew
