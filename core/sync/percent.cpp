#include "core/sync/percent.h"

namespace lidlark::sync {

namespace {

constexpr std::string_view digits = "0123456789ABCDEF";

bool isUnreserved(char c)
{
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') ||
           std::string_view("-._~").find(c) != std::string_view::npos;
}

} // namespace

std::string percentEncoded(std::string_view text)
{
    std::string encoded;
    for (const char c : text) {
        if (isUnreserved(c)) {
            encoded.push_back(c);
            continue;
        }
        const auto byte = static_cast<unsigned char>(c);
        encoded.push_back('%');
        encoded.push_back(digits[byte >> 4U]);
        encoded.push_back(digits[byte & 15U]);
    }
    return encoded;
}

std::optional<std::string> percentDecoded(std::string_view text)
{
    std::string decoded;
    for (std::size_t at = 0; at < text.size(); ++at) {
        if (text[at] != '%') {
            decoded.push_back(text[at]);
            continue;
        }
        if (text.size() - at < 3)
            return std::nullopt;
        const std::size_t high = digits.find(text[at + 1]);
        const std::size_t low = digits.find(text[at + 2]);
        if (high == std::string_view::npos || low == std::string_view::npos)
            return std::nullopt;
        decoded.push_back(static_cast<char>(high << 4U | low));
        at += 2;
    }
    // One text, one spelling: what needs no percent sign has none, and what needs one has it.
    return percentEncoded(decoded) == text ? std::optional(decoded) : std::nullopt;
}

} // namespace lidlark::sync
