#pragma once

#include <algorithm>
#include <array>
#include <string_view>

namespace lidlark::catalogue {

/// Allergens an item may name that have neither a tag of their own (latex, wheat) nor a question of
/// their own on the home sheet (milk). Source: safety.md AL-01.
inline constexpr std::array<std::string_view, 5> plainAllergens{"egg", "nut", "soy", "adhesive",
                                                                "dye"};

inline bool isPlainAllergen(std::string_view name)
{
    return std::find(plainAllergens.begin(), plainAllergens.end(), name) != plainAllergens.end();
}

} // namespace lidlark::catalogue
