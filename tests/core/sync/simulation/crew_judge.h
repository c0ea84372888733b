#pragma once

#include "sim_view.h"

#include <sstream>

namespace lidlark::test {

/// What everybody has written, and whether it is where it should be.
class CrewJudge
{
public:
    using Phones = std::vector<std::unique_ptr<SimPhone>>;

    explicit CrewJudge(const Phones &phones) : m_phones(phones) {}

    /// What went wrong first; empty: nothing.
    [[nodiscard]] std::string fault() const { return m_fault; }
    [[nodiscard]] std::size_t written() const { return m_written.size(); }
    [[nodiscard]] int comparisons() const { return m_comparisons; }

    /// After whatever happened on a phone.
    void look(SimPhone &phone)
    {
        m_views[&phone] = lanesIn(phone.database);
        for (const Written &event : writtenIn(phone.database)) {
            if (event.device == phone.device.id.value && m_written.insert(event.identity).second)
                m_events.push_back(event);
        }
        checkNothingForbidden(phone);
        for (const auto &[other, view] : m_views) {
            if (other != &phone)
                compare(phone, *other);
        }
    }

    /// What lies in a store that is about to go, and nowhere else, may be lost with it.
    void forgive(SimPhone &phone)
    {
        std::map<std::string, std::uint64_t> shared;
        for (const auto &row :
             rowsOf(phone.database, "SELECT lane, max(last_counter) FROM segment WHERE device = '" +
                                        phone.device.id.value +
                                        "' AND shared_ms IS NOT NULL GROUP BY lane"))
            shared[row.at(0)] = std::stoull(row.at(1));
        for (const Written &event : writtenIn(phone.database)) {
            if (event.device == phone.device.id.value && event.counter > shared[event.lane])
                m_forgiven.insert(event.identity);
        }
    }

    /// At the end, after calm exchanges: everything is everywhere it should be.
    void judge()
    {
        for (const auto &phone : m_phones) {
            if (!phone->in || phone->device.role == store::Role::Guest)
                continue;
            look(*phone);
            const auto matches = store::Projector(phone->database).matchesRefold();
            if (!matches || !*matches)
                fail(*phone, "its rows are not those of a refold");
            if (!conserves(*phone, "b-effie"))
                fail(*phone, "pieces do not add up");
            checkHoldsAll(*phone);
        }
    }

    void fail(const SimPhone &phone, const std::string &what)
    {
        if (m_fault.empty())
            m_fault = phone.device.id.value + " (" + phone.device.person + "): " + what;
    }

private:
    static bool mayRead(const SimPhone &phone, const journal::Lane &lane)
    {
        crew::Member member;
        member.device = phone.device.id;
        member.role = phone.device.role;
        member.home = phone.device.home;
        return crew::mayRead(member, lane);
    }

    void checkNothingForbidden(SimPhone &phone)
    {
        for (const auto &row : rowsOf(phone.database, "SELECT DISTINCT lane, device FROM event")) {
            const auto lane = journal::laneFromText(row.at(0));
            const bool own = row.at(1) == phone.device.id.value || row.at(1) == phone.was.value;
            if (!own && !(lane && mayRead(phone, *lane)))
                fail(phone, "holds a line of " + row.at(0) + " by " + row.at(1));
        }
    }

    /// Who holds the same events shows the same.
    void compare(const SimPhone &one, const SimPhone &other)
    {
        const auto &mine = m_views[&one];
        const auto &theirs = m_views[&other];
        const journal::Lane box{journal::LaneKind::Box, "b-effie"};
        const auto here = mine.find(box);
        const auto there = theirs.find(box);
        if (here == mine.end() || there == theirs.end() ||
            here->second.events != there->second.events)
            return; // who is in the crew decides what counts in every lane
        for (const auto &[lane, view] : mine) {
            const auto same = theirs.find(lane);
            if (same == theirs.end() || same->second.events != view.events)
                continue;
            ++m_comparisons;
            if (same->second.rows != view.rows)
                fail(one, "shows another " + toText(lane) + " than " + other.device.id.value);
        }
    }

    [[nodiscard]] bool isAccepted(const crew::Crew &crew, const Written &event) const
    {
        const auto lane = journal::laneFromText(event.lane);
        const crew::Member *member = crew.member({event.device});
        const bool inTime = member == nullptr || !member->until ||
                            Day{static_cast<std::int32_t>(event.day)} <= *member->until;
        return !m_forgiven.contains(event.identity) && member != nullptr && inTime &&
               event.counter <= crew.acceptedUpTo({event.device}, *lane);
    }

    void checkHoldsAll(SimPhone &phone)
    {
        const auto crew = store::CrewRepository(phone.database).crewOf("b-effie");
        std::set<std::string> here;
        std::map<std::tuple<std::string, std::string, std::uint64_t>, int> places;
        for (const Written &event : writtenIn(phone.database)) {
            here.insert(event.identity);
            if (++places[{event.lane, event.device, event.counter}] > 1)
                fail(phone, "has two at one place: " + textOf(event));
        }
        for (const Written &event : m_events) {
            const auto lane = journal::laneFromText(event.lane);
            if (mayRead(phone, *lane) && isAccepted(*crew, event) && !here.contains(event.identity))
                fail(phone, "has never got " + textOf(event));
        }
    }

    static std::string textOf(const Written &event)
    {
        return event.lane + " " + event.device + " " + std::to_string(event.counter) + " " +
               event.kind;
    }

    const Phones &m_phones;
    std::map<const SimPhone *, std::map<journal::Lane, LaneView>> m_views;
    std::set<std::string> m_written;
    std::set<std::string> m_forgiven;
    std::vector<Written> m_events;
    std::string m_fault;
    int m_comparisons = 0;
};

} // namespace lidlark::test
