#pragma once

#include <cstddef>
#include <string_view>

namespace lidlark::sync {

/// How many slips of a finger make the one word of the other: a letter too many, too few, another,
/// or two neighbours exchanged; no letter slips twice (the restricted Damerau-Levenshtein
/// distance).
std::size_t typingSlips(std::string_view one, std::string_view other);

} // namespace lidlark::sync
