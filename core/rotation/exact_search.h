#pragma once

#include "core/rotation/partial_menu.h"

#include <cstdint>
#include <functional>
#include <optional>
#include <vector>

namespace lidlark::rotation {

/// The best choice, or where the search was stopped the best one found.
struct Choice {
    std::vector<std::size_t> entries; ///< Ascending.
    int value = 0;                    ///< Tenths.
    bool proven = true;               ///< No choice is worth more.
};

/// The best choice of exactly `rules.offers` entries, by branch and bound. Among choices of equal
/// value the one whose ascending entries come first in dictionary order.
/// @param nodes search nodes visited are added here.
/// @param isOver asked at every node; once it says yes the search ends with the best choice found,
/// not proven and not the first among
/// equals. Empty: it goes on to the end.
/// @returns nothing when no choice satisfies the rules and the stock, or none was found in time.
std::optional<Choice> bestChoice(const MenuProblem &problem, const ChoiceRules &rules,
                                 std::int64_t &nodes, const std::function<bool()> &isOver = {});

} // namespace lidlark::rotation
