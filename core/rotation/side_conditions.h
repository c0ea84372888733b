#pragma once

#include "core/rotation/menu.h"
#include "core/rotation/menu_problem.h"

#include <span>
#include <vector>

namespace lidlark::rotation {

/// The side conditions still in force when the first few, in the order of the enumeration, have
/// given way.
class ConditionsInForce
{
public:
    /// @param givenWay 0 (all in force) to sideConditionCount (none).
    explicit constexpr ConditionsInForce(std::size_t givenWay) : m_givenWay(givenWay) {}

    [[nodiscard]] constexpr bool holds(SideCondition condition) const
    {
        return static_cast<std::size_t>(condition) >= m_givenWay;
    }
    bool operator==(const ConditionsInForce &) const = default;

private:
    std::size_t m_givenWay;
};

/// Whether the chosen entries break the condition: two new, no known friend, none without a table,
/// two of one family, two messy ones. An empty choice breaks nothing.
bool breaks(SideCondition condition, const MenuProblem &problem,
            std::span<const std::size_t> chosen);

/// The conditions that the chosen entries really break, in the order of the enumeration.
std::vector<SideCondition> brokenBy(const MenuProblem &problem,
                                    std::span<const std::size_t> chosen);

} // namespace lidlark::rotation
