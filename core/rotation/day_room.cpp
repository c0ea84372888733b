#include "core/rotation/day_room.h"

#include <algorithm>

namespace lidlark::rotation {

DayRoom::DayRoom(const MenuProblem &problem, const ChoiceRules &rules)
    : m_problem(&problem), m_rules(&rules), m_atMost(limitsOf(rules)),
      m_atLeastOne(missingTraitsOf(rules)), m_stock(problem.stock), m_minutesLeft(rules.minutes)
{
}

bool DayRoom::fits(std::size_t index) const
{
    const Entry &candidate = m_problem->entries[index];
    if (placesLeft() == 0 || candidate.minutes > m_minutesLeft)
        return false;
    for (const AtMost &limit : m_atMost) {
        if (candidate.*limit.trait && limit.left <= 0)
            return false;
    }
    for (const AtLeastOne &need : m_atLeastOne) {
        if (placesLeft() == 1 && need.found == 0 && !(candidate.*need.trait))
            return false;
    }
    for (const Need &need : candidate.needs) {
        if (m_stock[need.item] < need.pieces)
            return false;
    }
    return !m_rules->inForce.holds(SideCondition::Family) || candidate.family == noFamily ||
           std::ranges::none_of(m_entries, [&](std::size_t other) {
               return m_problem->entries[other].family == candidate.family;
           });
}

void DayRoom::put(std::size_t index)
{
    m_entries.push_back(index);
    count(m_problem->entries[index], 1);
}

void DayRoom::takeOut(std::size_t index)
{
    m_entries.erase(std::ranges::find(m_entries, index));
    count(m_problem->entries[index], -1);
}

void DayRoom::count(const Entry &entry, int sign)
{
    m_minutesLeft -= sign * entry.minutes;
    for (const Need &need : entry.needs)
        m_stock[need.item] -= sign * need.pieces;
    for (AtMost &limit : m_atMost) {
        if (entry.*limit.trait)
            limit.left -= sign;
    }
    for (AtLeastOne &need : m_atLeastOne) {
        if (entry.*need.trait)
            need.found += sign;
    }
}

std::vector<DayRoom> roomsOf(const MenuProblem &problem, std::span<const ChoiceRules> days)
{
    std::vector<DayRoom> rooms;
    rooms.reserve(days.size());
    for (const ChoiceRules &rules : days)
        rooms.emplace_back(problem, rules);
    return rooms;
}

} // namespace lidlark::rotation
