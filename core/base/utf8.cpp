#include "core/base/utf8.h"

#include <cstddef>

namespace lidlark {

namespace {

bool isPlainAscii(unsigned char byte)
{
    return (byte >= 0x20 && byte < 0x7F) || byte == '\t' || byte == '\n' || byte == '\r';
}

/// The bytes that may follow a leading byte: how many, and the range of the first of them. The
/// range is where RFC 3629 shuts out overlong forms, surrogates and values above U+10FFFF.
struct Tail {
    std::size_t length = 0; ///< 0: not a leading byte.
    unsigned char low = 0x80;
    unsigned char high = 0xBF;
};

Tail tailOf(unsigned char lead)
{
    if (lead >= 0xC2 && lead <= 0xDF)
        return {.length = 1};
    if (lead == 0xE0)
        return {.length = 2, .low = 0xA0};
    if (lead == 0xED)
        return {.length = 2, .high = 0x9F};
    if (lead >= 0xE1 && lead <= 0xEF)
        return {.length = 2};
    if (lead == 0xF0)
        return {.length = 3, .low = 0x90};
    if (lead >= 0xF1 && lead <= 0xF3)
        return {.length = 3};
    if (lead == 0xF4)
        return {.length = 3, .high = 0x8F};
    return {};
}

bool tailFits(Tail tail, std::string_view rest)
{
    if (tail.length == 0 || rest.size() < tail.length)
        return false;
    const auto first = static_cast<unsigned char>(rest.front());
    if (first < tail.low || first > tail.high)
        return false;
    for (const char c : rest.substr(1, tail.length - 1)) {
        if ((static_cast<unsigned char>(c) & 0xC0U) != 0x80)
            return false;
    }
    return true;
}

} // namespace

bool isPlainUtf8(std::string_view bytes)
{
    while (!bytes.empty()) {
        const auto lead = static_cast<unsigned char>(bytes.front());
        bytes.remove_prefix(1);
        if (lead < 0x80) {
            if (!isPlainAscii(lead))
                return false;
            continue;
        }
        const Tail tail = tailOf(lead);
        if (!tailFits(tail, bytes))
            return false;
        bytes.remove_prefix(tail.length);
    }
    return true;
}

} // namespace lidlark
