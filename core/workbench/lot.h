#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace lidlark::workbench {

/// The longest lot note, in bytes [P].
inline constexpr std::size_t longestLot = 40;

/// A lot as it is looked for: small letters large, and nothing but letters and digits of ASCII and
/// whatever is beyond it. "l 2306-a" and "L2306A" are one lot; a slip of the pen must not hide a
/// box from a recall. Empty where nothing is left.
inline std::string lotKey(std::string_view typed)
{
    std::string key;
    for (const char letter : typed) {
        const bool small = letter >= 'a' && letter <= 'z';
        const bool kept = small || (letter >= 'A' && letter <= 'Z') ||
                          (letter >= '0' && letter <= '9') || static_cast<signed char>(letter) < 0;
        if (kept)
            key += small ? static_cast<char>(letter - 'a' + 'A') : letter;
    }
    return key;
}

} // namespace lidlark::workbench
