#pragma once

#include "core/crew/crew.h"
#include "core/crew/opening.h"
#include "core/crew/rights.h"
#include "core/journal/seen.h"

#include <algorithm>
#include <map>
#include <random>
#include <string>
#include <vector>

namespace lidlark::test {

inline const journal::Lane box{journal::LaneKind::Box, "b-fin"};
inline const Day firstDay{20'000};

inline crew::Member memberOf(const std::string &name, crew::Role role, const std::string &home = {})
{
    crew::Member member;
    member.device = {name};
    member.person = name;
    member.role = role;
    member.home = {home};
    if (role == crew::Role::Guest)
        member.until = firstDay + 6;
    return member;
}

/// What the phones of a crew have said of it, and what each had met when it spoke.
class CrewLog
{
public:
    journal::Event &say(const std::string &device, journal::Kind kind, std::string fields)
    {
        journal::Event event;
        event.lane = box;
        event.device = {device};
        event.counter = ++m_counters[device];
        event.instant = {++m_now, 0};
        event.when = {firstDay, PartOfDay::Morning};
        event.author = device;
        event.kind = kind;
        event.fields = std::move(fields);
        m_events.push_back(event);
        return m_events.back();
    }
    void letIn(const std::string &by, const crew::Member &member)
    {
        say(by, journal::Kind::Member, fieldsOf(member));
    }
    void found(const crew::Member &member) { letIn(member.device.value, member); }
    /// @param upTo the last counter that is accepted.
    void remove(const std::string &by, const std::string &device, std::uint64_t upTo)
    {
        say(by, journal::Kind::MemberRemoved, fieldsOf(crew::Removal{{device}, {{box, upTo}}}));
    }
    /// Accepts all that was here when all met last.
    void remove(const std::string &by, const std::string &device)
    {
        remove(by, device, m_met[device]);
    }
    Digest open(const std::string &by, const journal::Lane &lane,
                const std::vector<std::string> &holders, const std::set<Digest> &after = {})
    {
        crew::Opening opening{{}, lane, {}, {}, {}, after};
        for (const std::string &holder : holders)
            opening.letters[{holder}] = "a letter to " + holder;
        const journal::Event &event = say(by, journal::Kind::Epoch, fieldsOf(opening));
        return blake2b(journal::canonicalText(event));
    }
    /// Everybody has met everything so far.
    void allMeet()
    {
        const auto counters = m_counters;
        m_met = counters;
        for (const auto &[device, counter] : counters) {
            auto covered = std::map<std::string, std::uint64_t>(counters.begin(), counters.end());
            covered.erase(device);
            say(device, journal::Kind::Met, journal::metFields(covered));
        }
    }

    [[nodiscard]] const std::vector<journal::Event> &events() const { return m_events; }
    [[nodiscard]] crew::Crew fold() const { return foldOf(m_events); }
    /// The same in another order, some of it twice.
    [[nodiscard]] crew::Crew foldShuffled(unsigned seed) const { return foldOf(shuffled(seed)); }
    [[nodiscard]] std::vector<journal::Event> shuffled(unsigned seed) const
    {
        std::vector<journal::Event> events = m_events;
        std::mt19937 random(seed);
        std::shuffle(events.begin(), events.end(), random);
        return events;
    }

private:
    static crew::Crew foldOf(const std::vector<journal::Event> &events)
    {
        return crew::Crew::fold(events, journal::Seen(events));
    }

    std::vector<journal::Event> m_events;
    std::map<std::string, std::uint64_t> m_counters;
    std::map<std::string, std::uint64_t> m_met;
    std::int64_t m_now = 1'800'000'000'000;
};

} // namespace lidlark::test
