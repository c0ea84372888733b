#pragma once

#include "core/crypto/bytes.h"

#include <optional>
#include <string>
#include <string_view>

namespace lidlark::crypto {

/// Bytes that a seal adds: its tag.
inline constexpr std::size_t sealGrowth = 16;

/// @p text closed with XChaCha20-Poly1305 (draft-irtf-cfrg-xchacha-03, 2), its tag at the end.
/// @param beside what can be read without the key, and cannot be changed without being noticed.
/// @param nonce 24 bytes of chance: the same one twice under one key would give both texts away.
std::string sealed(std::string_view text, std::string_view beside, const SealKey &key,
                   const Nonce &nonce);

/// @returns nothing when a single bit of it, of what stands beside it, or of the key is another.
std::optional<std::string> opened(std::string_view closed, std::string_view beside,
                                  const SealKey &key, const Nonce &nonce);

} // namespace lidlark::crypto
