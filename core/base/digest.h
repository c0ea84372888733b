#pragma once

#include "core/base/hex.h"

#include <array>
#include <cstdint>
#include <string>
#include <string_view>

namespace lidlark {

/// BLAKE2b with a 32-byte digest (RFC 7693), computed by libsodium.
using Digest = std::array<std::uint8_t, 32>;

Digest blake2b(std::string_view bytes);
/// The first eight bytes, big-endian: 2^64 possible ranks (design.md 5).
std::uint64_t leadingEight(const Digest &digest);

} // namespace lidlark
