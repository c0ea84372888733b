#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <string_view>

namespace lidlark {

/// The written names of an enumeration, in the order of its values (0, 1, 2 ...).
template <class Enum, std::size_t Count> struct EnumNames {
    std::array<std::string_view, Count> names;

    [[nodiscard]] constexpr std::string_view of(Enum value) const
    {
        return names[static_cast<std::size_t>(value)];
    }
    [[nodiscard]] constexpr std::optional<Enum> parse(std::string_view text) const
    {
        for (std::size_t i = 0; i < Count; ++i) {
            if (names[i] == text)
                return static_cast<Enum>(i);
        }
        return std::nullopt;
    }
};

} // namespace lidlark
