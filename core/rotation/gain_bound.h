#pragma once

#include "core/rotation/partial_menu.h"

#include <optional>
#include <span>

namespace lidlark::rotation {

/// An entry and what it would add to the menu as it stands.
struct Scored {
    std::size_t entry = 0;
    int gain = 0;
};

/// The sum of the @p slots largest gains of two lists together, each sorted with the largest first.
/// @returns nothing when there are not that many.
std::optional<int> largestGains(std::span<const Scored> one, std::span<const Scored> other,
                                std::size_t slots);

/// No completion of the menu adds more than this: gains only shrink as entries come in, so the sum
/// of the largest ones bounds it, and each limit of the menu (new, messy, held back, families, a
/// known friend, one without a table; the minutes together with the mess) taken by itself bounds it
/// too; the smallest counts.
/// @param open entries that can be taken now, the largest gain first.
/// @param beyond where the bound is this or less already, it is not made tighter.
/// @returns nothing when no completion exists.
std::optional<int> gainBound(const PartialMenu &menu, std::span<const Scored> open, int beyond);

} // namespace lidlark::rotation
