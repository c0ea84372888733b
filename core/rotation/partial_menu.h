#pragma once

#include "core/rotation/menu_problem.h"
#include "core/rotation/side_conditions.h"

#include <array>
#include <limits>
#include <span>
#include <vector>

namespace lidlark::rotation {

/// What a choice has to satisfy besides the stock, which always holds.
struct ChoiceRules {
    std::size_t offers = 3;
    ConditionsInForce inForce{0};
    std::size_t heldBackMost = 0; ///< At most so many held-back entries.
    int messyMost = 1;            ///< At most so many messy ones, where OneMess is in force.
    /// Of all chosen together. The offers of a menu are alternatives: there nothing binds.
    int minutes = std::numeric_limits<int>::max();
    bool operator==(const ChoiceRules &) const = default;
};

/// A trait that only so many of the chosen may have.
struct AtMost {
    bool Entry::*trait;
    int left;
};

/// Where the limit on mess stands among those of a menu.
inline constexpr std::size_t messyLimit = 1;

/// A trait that one of the chosen must have.
struct AtLeastOne {
    bool Entry::*trait;
    int found; ///< Chosen entries that have it.
};

/// The limits of a menu before anything is chosen: new, messy, held back.
std::array<AtMost, 3> limitsOf(const ChoiceRules &rules);
/// The traits that a menu needs: a known friend, one without a table. A condition that has given
/// way counts as found, so that nothing looks for it.
std::array<AtLeastOne, 2> missingTraitsOf(const ChoiceRules &rules);

/// The entries chosen so far on the way to a menu, and what they leave open.
class PartialMenu
{
public:
    /// @param problem,rules must outlive this.
    PartialMenu(const MenuProblem &problem, const ChoiceRules &rules);

    [[nodiscard]] const Entry &entry(std::size_t index) const { return m_problem.entries[index]; }
    [[nodiscard]] std::span<const std::size_t> chosen() const { return m_chosen; }
    [[nodiscard]] std::size_t slotsLeft() const { return m_rules.offers - m_chosen.size(); }
    [[nodiscard]] int value() const { return m_value; }
    [[nodiscard]] int minutesLeft() const { return m_minutesLeft; }
    /// Minutes that the chosen put on each curve, and pieces of each item that they leave.
    [[nodiscard]] std::span<const int> minutesOn() const { return m_minutes; }
    [[nodiscard]] std::span<const int> stockLeft() const { return m_stock; }
    [[nodiscard]] std::span<const AtMost> atMost() const { return m_atMost; }
    [[nodiscard]] std::span<const AtLeastOne> atLeastOne() const { return m_atLeastOne; }
    [[nodiscard]] bool familiesDiffer() const
    {
        return m_rules.inForce.holds(SideCondition::Family);
    }

    /// Whether the entry can come in beside the chosen ones. The last place is only for an entry
    /// that brings every trait still missing.
    [[nodiscard]] bool canTake(std::size_t index) const;
    /// What the entry would add beside the chosen ones. It never adds more beside further ones.
    [[nodiscard]] int gain(std::size_t index) const;

    void take(std::size_t index);
    /// Undoes the last take.
    void giveBack();

private:
    void count(const Entry &entry, bool in);

    const MenuProblem &m_problem;
    const ChoiceRules &m_rules;
    std::array<AtMost, 3> m_atMost;
    std::array<AtLeastOne, 2> m_atLeastOne;
    std::vector<std::size_t> m_chosen;
    std::vector<int> m_gains; ///< What each chosen entry added when it came in.
    std::vector<int> m_minutes;
    std::vector<int> m_stock;
    int m_minutesLeft;
    int m_value = 0;
};

} // namespace lidlark::rotation
