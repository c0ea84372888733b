#include "core/rotation/partial_menu.h"

#include <algorithm>

namespace lidlark::rotation {

std::array<AtMost, 3> limitsOf(const ChoiceRules &rules)
{
    const auto most = [&](SideCondition condition, int inForce) {
        return rules.inForce.holds(condition) ? inForce : static_cast<int>(rules.offers);
    };
    return {{{&Entry::isNew, most(SideCondition::OneNew, 1)},
             {&Entry::isMessy, most(SideCondition::OneMess, rules.messyMost)},
             {&Entry::isHeldBack, static_cast<int>(rules.heldBackMost)}}};
}

std::array<AtLeastOne, 2> missingTraitsOf(const ChoiceRules &rules)
{
    const auto found = [&](SideCondition condition) {
        return rules.inForce.holds(condition) ? 0 : 1;
    };
    return {{{&Entry::isKnownFriend, found(SideCondition::KnownFriend)},
             {&Entry::isWithoutTable, found(SideCondition::WithoutTable)}}};
}

PartialMenu::PartialMenu(const MenuProblem &problem, const ChoiceRules &rules)
    : m_problem(problem), m_rules(rules), m_atMost(limitsOf(rules)),
      m_atLeastOne(missingTraitsOf(rules)), m_minutes(problem.curves.size(), 0),
      m_stock(problem.stock), m_minutesLeft(rules.minutes)
{
}

bool PartialMenu::canTake(std::size_t index) const
{
    const Entry &candidate = entry(index);
    if (candidate.minutes > m_minutesLeft)
        return false;
    for (const AtMost &limit : m_atMost) {
        if (candidate.*limit.trait && limit.left == 0)
            return false;
    }
    for (const AtLeastOne &need : m_atLeastOne) {
        if (slotsLeft() == 1 && need.found == 0 && !(candidate.*need.trait))
            return false;
    }
    for (const Need &need : candidate.needs) {
        if (m_stock[need.item] < need.pieces)
            return false;
    }
    return !familiesDiffer() || candidate.family == noFamily ||
           std::ranges::none_of(m_chosen, [&](std::size_t other) {
               return entry(other).family == candidate.family;
           });
}

int PartialMenu::gain(std::size_t index) const
{
    const Entry &candidate = entry(index);
    int gain = candidate.worth;
    for (const Amount &amount : candidate.amounts)
        gain += gainOf(m_problem.curves[amount.curve], m_minutes[amount.curve], amount.minutes);
    return gain;
}

void PartialMenu::take(std::size_t index)
{
    m_gains.push_back(gain(index));
    m_value += m_gains.back();
    m_chosen.push_back(index);
    count(entry(index), true);
}

void PartialMenu::giveBack()
{
    count(entry(m_chosen.back()), false);
    m_chosen.pop_back();
    m_value -= m_gains.back();
    m_gains.pop_back();
}

void PartialMenu::count(const Entry &entry, bool in)
{
    const int sign = in ? 1 : -1;
    m_minutesLeft -= sign * entry.minutes;
    for (const Amount &amount : entry.amounts)
        m_minutes[amount.curve] += sign * amount.minutes;
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

} // namespace lidlark::rotation
