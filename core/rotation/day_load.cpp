#include "core/rotation/day_load.h"

#include <algorithm>

namespace lidlark::rotation {

namespace {

/// A rule broken weighs as much as so many minutes too many: those are the easiest to move.
constexpr int ruleWeight = 3;

int tooMany(int left)
{
    return std::max(0, -left);
}

} // namespace

DayLoad::DayLoad(const MenuProblem &problem, const ChoiceRules &rules)
    : m_problem(&problem), m_rules(&rules), m_atMost(limitsOf(rules)),
      m_atLeastOne(missingTraitsOf(rules)), m_stock(problem.stock), m_minutesLeft(rules.minutes)
{
    m_broken = traitsBroken();
}

void DayLoad::put(std::size_t index)
{
    count(index, 1);
    m_entries.push_back(index);
}

void DayLoad::takeOut(std::size_t index)
{
    m_entries.erase(std::ranges::find(m_entries, index));
    count(index, -1);
}

int DayLoad::change(std::size_t out, std::size_t in)
{
    const int before = m_broken;
    const auto place = std::ranges::find(m_entries, out);
    *place = m_entries.back();
    m_entries.pop_back();
    count(out, -1);
    count(in, 1);
    const int after = m_broken;
    count(in, -1);
    count(out, 1);
    m_entries.push_back(out);
    return after - before;
}

bool DayLoad::hasFamilyOf(const Entry &entry) const
{
    return m_rules->inForce.holds(SideCondition::Family) && entry.family != noFamily &&
           std::ranges::any_of(m_entries, [&](std::size_t other) {
               return m_problem->entries[other].family == entry.family;
           });
}

int DayLoad::traitsBroken() const
{
    int broken = 0;
    for (const AtMost &limit : m_atMost)
        broken += tooMany(limit.left);
    for (const AtLeastOne &need : m_atLeastOne)
        broken += need.found == 0 && m_rules->offers > 0 ? 1 : 0;
    return ruleWeight * broken;
}

/// @pre the entry is not among m_entries.
void DayLoad::count(std::size_t index, int sign)
{
    const Entry &entry = m_problem->entries[index];
    m_broken -= tooMany(m_minutesLeft) + traitsBroken();
    m_minutesLeft -= sign * entry.minutes;
    for (const Need &need : entry.needs) {
        m_broken -= ruleWeight * tooMany(m_stock[need.item]);
        m_stock[need.item] -= sign * need.pieces;
        m_broken += ruleWeight * tooMany(m_stock[need.item]);
    }
    for (AtMost &limit : m_atMost) {
        if (entry.*limit.trait)
            limit.left -= sign;
    }
    for (AtLeastOne &need : m_atLeastOne) {
        if (entry.*need.trait)
            need.found += sign;
    }
    m_broken += tooMany(m_minutesLeft) + traitsBroken();
    m_broken += hasFamilyOf(entry) ? sign * ruleWeight : 0;
}

} // namespace lidlark::rotation
