#include "core/rotation/plan_draft.h"

#include <algorithm>

namespace lidlark::rotation {

PlanDraft::PlanDraft(const MenuProblem &problem, std::span<const ChoiceRules> days)
    : m_problem(&problem), m_rooms(roomsOf(problem, days)),
      m_dayOf(problem.entries.size(), nowhere), m_minutes(problem.curves.size(), 0)
{
    for (const ChoiceRules &rules : days)
        m_placesLeft += rules.offers;
}

int PlanDraft::gain(std::size_t entry) const
{
    const Entry &one = m_problem->entries[entry];
    int gain = one.worth;
    for (const Amount &amount : one.amounts)
        gain += gainOf(m_problem->curves[amount.curve], m_minutes[amount.curve], amount.minutes);
    return gain;
}

std::size_t PlanDraft::roomiestFor(std::size_t entry) const
{
    std::size_t best = nowhere;
    for (std::size_t day = 0; day < m_rooms.size(); ++day) {
        const bool roomier =
            best == nowhere || (m_rooms[day].placesLeft() > 0 &&
                                minutesAPlace(m_rooms[day]) > minutesAPlace(m_rooms[best]));
        if (roomier && m_rooms[day].fits(entry))
            best = day;
    }
    return best;
}

void PlanDraft::put(std::size_t entry, std::size_t day)
{
    m_value += gain(entry);
    count(entry, 1);
    m_rooms[day].put(entry);
    m_dayOf[entry] = day;
    --m_placesLeft;
}

void PlanDraft::takeOut(std::size_t entry)
{
    m_rooms[m_dayOf[entry]].takeOut(entry);
    m_dayOf[entry] = nowhere;
    count(entry, -1);
    m_value -= gain(entry);
    ++m_placesLeft;
}

void PlanDraft::count(std::size_t entry, int sign)
{
    for (const Amount &amount : m_problem->entries[entry].amounts)
        m_minutes[amount.curve] += sign * amount.minutes;
}

std::vector<std::vector<std::size_t>> PlanDraft::days() const
{
    std::vector<std::vector<std::size_t>> days;
    days.reserve(m_rooms.size());
    for (const DayRoom &room : m_rooms) {
        days.emplace_back(room.entries().begin(), room.entries().end());
        std::ranges::sort(days.back());
    }
    return days;
}

std::int64_t minutesAPlace(const DayRoom &room)
{
    return 64 * static_cast<std::int64_t>(room.minutesLeft()) /
           static_cast<std::int64_t>(room.placesLeft());
}

std::optional<PlanDraft> pinnedDraft(const MenuProblem &problem, const PlanRules &rules)
{
    PlanDraft draft(problem, rules.days);
    if (rules.pinned.size() > rules.days.size())
        return std::nullopt;
    for (std::size_t day = 0; day < rules.pinned.size(); ++day) {
        for (const std::size_t entry : rules.pinned[day]) {
            if (entry >= problem.entries.size() || draft.dayOf(entry) != nowhere ||
                !draft.room(day).fits(entry))
                return std::nullopt;
            draft.put(entry, day);
        }
    }
    return draft;
}

} // namespace lidlark::rotation
