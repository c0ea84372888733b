#pragma once

#include "core/rotation/menu_problem.h"
#include "core/rotation/partial_menu.h"

#include <array>
#include <span>
#include <vector>

namespace lidlark::rotation {

/// What stands on one day whether it keeps to the rules or not, and by how much it breaks them.
class DayLoad
{
public:
    /// @param problem,rules must outlive this.
    DayLoad(const MenuProblem &problem, const ChoiceRules &rules);

    [[nodiscard]] std::span<const std::size_t> entries() const { return m_entries; }
    [[nodiscard]] std::size_t placesLeft() const { return m_rules->offers - m_entries.size(); }
    /// Minutes, pieces, traits and families too many, and traits missing; 0: it keeps to the rules
    /// as far as a day that is not full can.
    [[nodiscard]] int broken() const { return m_broken; }

    void put(std::size_t index);
    /// @pre the entry is there.
    void takeOut(std::size_t index);
    /// What @p out for @p in would add to `broken`.
    [[nodiscard]] int change(std::size_t out, std::size_t in);

private:
    void count(std::size_t index, int sign);
    [[nodiscard]] int traitsBroken() const;
    [[nodiscard]] bool hasFamilyOf(const Entry &entry) const;

    const MenuProblem *m_problem;
    const ChoiceRules *m_rules;
    std::array<AtMost, 3> m_atMost;
    std::array<AtLeastOne, 2> m_atLeastOne;
    std::vector<std::size_t> m_entries;
    std::vector<int> m_stock;
    int m_minutesLeft;
    int m_broken = 0;
};

} // namespace lidlark::rotation
