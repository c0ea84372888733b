#pragma once

#include "core/rotation/menu_problem.h"
#include "core/rotation/partial_menu.h"

#include <array>
#include <span>
#include <vector>

namespace lidlark::rotation {

/// What one day of a plan holds and what it still has room for. Unlike a PartialMenu it lets any
/// entry out again, and knows nothing of worth: that belongs to the whole plan.
class DayRoom
{
public:
    /// @param problem,rules must outlive this.
    DayRoom(const MenuProblem &problem, const ChoiceRules &rules);

    [[nodiscard]] const ChoiceRules &rules() const { return *m_rules; }
    [[nodiscard]] std::span<const std::size_t> entries() const { return m_entries; }
    [[nodiscard]] std::size_t placesLeft() const { return m_rules->offers - m_entries.size(); }
    [[nodiscard]] int minutesLeft() const { return m_minutesLeft; }

    /// Whether the entry can come in beside those that are there. The last place is only for an
    /// entry that brings every trait still missing.
    [[nodiscard]] bool fits(std::size_t index) const;
    void put(std::size_t index);
    /// @pre the entry is there. Putting it back undoes this, up to the order of the entries.
    void takeOut(std::size_t index);

private:
    void count(const Entry &entry, int sign);

    const MenuProblem *m_problem;
    const ChoiceRules *m_rules;
    std::array<AtMost, 3> m_atMost;
    std::array<AtLeastOne, 2> m_atLeastOne;
    std::vector<std::size_t> m_entries;
    std::vector<int> m_stock; ///< Pieces of each item that are left.
    int m_minutesLeft;
};

/// An empty room for each day. @param problem,days must outlive them.
std::vector<DayRoom> roomsOf(const MenuProblem &problem, std::span<const ChoiceRules> days);

} // namespace lidlark::rotation
