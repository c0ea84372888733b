#pragma once

#include "core/rotation/partial_menu.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace lidlark::rotation {

/// A proven optimum.
struct Choice {
    std::vector<std::size_t> entries; ///< Ascending.
    int value = 0;                    ///< Tenths.
};

/// The best choice of exactly `rules.offers` entries, by branch and bound. Among choices of equal
/// value the one whose ascending entries come first in dictionary order.
/// @param nodes search nodes visited are added here.
/// @returns nothing when no choice satisfies the rules and the stock.
std::optional<Choice> bestChoice(const MenuProblem &problem, const ChoiceRules &rules,
                                 std::int64_t &nodes);

} // namespace lidlark::rotation
