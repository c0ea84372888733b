#include "core/base/hex.h"

namespace lidlark {

namespace {

constexpr std::string_view hexDigits = "0123456789abcdef";

} // namespace

std::string hexOf(std::span<const std::uint8_t> bytes)
{
    std::string text;
    text.reserve(bytes.size() * 2);
    for (const std::uint8_t byte : bytes) {
        text.push_back(hexDigits[byte >> 4U]);
        text.push_back(hexDigits[byte & 15U]);
    }
    return text;
}

std::string hexOf(std::string_view bytes)
{
    return hexOf(std::span(reinterpret_cast<const std::uint8_t *>(bytes.data()), bytes.size()));
}

std::optional<std::string> bytesFromHex(std::string_view hex)
{
    if (hex.size() % 2 != 0)
        return std::nullopt;
    std::string bytes;
    bytes.reserve(hex.size() / 2);
    for (std::size_t i = 0; i < hex.size(); i += 2) {
        const std::size_t high = hexDigits.find(hex[i]);
        const std::size_t low = hexDigits.find(hex[i + 1]);
        if (high == std::string_view::npos || low == std::string_view::npos)
            return std::nullopt;
        bytes.push_back(static_cast<char>(high << 4U | low));
    }
    return bytes;
}

} // namespace lidlark
