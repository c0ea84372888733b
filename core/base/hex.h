#pragma once

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace lidlark {

/// Lower-case hexadecimal, two digits a byte.
std::string hexOf(std::span<const std::uint8_t> bytes);

/// The same for bytes that are kept as text.
std::string hexOf(std::string_view bytes);

/// @returns nothing unless @p hex is just that many bytes in lower-case hexadecimal.
std::optional<std::string> bytesFromHex(std::string_view hex);

/// The same for a known number of bytes.
template <std::size_t Size>
std::optional<std::array<std::uint8_t, Size>> arrayFromHex(std::string_view hex)
{
    const auto bytes = bytesFromHex(hex);
    if (!bytes || bytes->size() != Size)
        return std::nullopt;
    std::array<std::uint8_t, Size> array{};
    std::copy(bytes->begin(), bytes->end(), array.begin());
    return array;
}

} // namespace lidlark
