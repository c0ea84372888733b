#include "core/sync/join_check.h"

namespace lidlark::sync {

namespace {

/// x^10 + x^3 + 1, under which the powers of x run through all 1023 numbers but 0: ten bits add by
/// exclusive or and multiply as polynomials, and every number but 0 can be divided by.
constexpr unsigned modulus = 0x409;

constexpr unsigned timesX(unsigned number)
{
    const unsigned doubled = number << 1U;
    return doubled < 0x400 ? doubled : doubled ^ modulus;
}

} // namespace

// The check is x w8 + x^2 w7 + ... + x^8 w1. A word that is off by d != 0 moves the sum by x^i d,
// which is not 0; two that changed places move it by (x^i + x^j)(w + w'), and no two powers below
// x^1023 are the same. The check word itself stands at x^0.
std::uint16_t joinCheck(std::span<const std::uint16_t> words)
{
    unsigned sum = 0;
    for (const std::uint16_t word : words)
        sum = timesX(sum ^ word);
    return static_cast<std::uint16_t>(sum);
}

} // namespace lidlark::sync
