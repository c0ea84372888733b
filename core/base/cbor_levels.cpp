#include "core/base/cbor_levels.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace lidlark {

namespace {

enum Major : std::uint8_t { Bytes = 2, Text = 3, List = 4, Map = 5, Tagged = 6 };

/// The first bytes of an item (RFC 8949, 3).
struct Head {
    std::uint8_t major = 0;
    std::uint64_t argument = 0;
};

/// @returns nothing where it is cut, or of unknown length.
std::optional<Head> takeHead(std::string_view &bytes)
{
    constexpr unsigned inNextByte = 24; // and in the next 2, 4 and 8
    constexpr unsigned inNextEight = 27;
    if (bytes.empty())
        return std::nullopt;
    const auto first = static_cast<std::uint8_t>(bytes.front());
    bytes.remove_prefix(1);
    Head head{static_cast<std::uint8_t>(first >> 5U), first & 31U};
    if (head.argument < inNextByte)
        return head;
    const std::size_t size = std::size_t{1} << (head.argument - inNextByte);
    if (head.argument > inNextEight || bytes.size() < size)
        return std::nullopt;
    head.argument = 0;
    for (const char byte : bytes.substr(0, size))
        head.argument = head.argument << 8U | static_cast<std::uint8_t>(byte);
    bytes.remove_prefix(size);
    return head;
}

} // namespace

bool isShallowCbor(std::string_view bytes, std::size_t levels)
{
    std::vector<std::uint64_t> toCome{1}; // items of the whole, then of each open list or map
    while (!toCome.empty()) {
        const auto head = takeHead(bytes);
        if (!head || head->major == Tagged)
            return false;
        --toCome.back();
        const bool holds = head->major >= Bytes && head->major <= Map;
        if (holds && head->argument > bytes.size()) // each takes a byte at least
            return false;
        if (head->major == Bytes || head->major == Text)
            bytes.remove_prefix(head->argument);
        else if (holds)
            toCome.push_back(head->major == Map ? 2 * head->argument : head->argument);
        if (toCome.size() > levels + 1)
            return false;
        while (!toCome.empty() && toCome.back() == 0)
            toCome.pop_back();
    }
    return bytes.empty();
}

} // namespace lidlark
