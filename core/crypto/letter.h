#pragma once

#include "core/crypto/bytes.h"

#include <optional>
#include <string>
#include <string_view>

namespace lidlark::crypto {

/// What a device reads letters with.
using LetterSeed = Secret<32>;
/// What others write letters to it with (X25519, RFC 7748).
using LetterKey = std::array<std::uint8_t, 32>;

/// Bytes that a letter adds: a key of its own and a tag.
inline constexpr std::size_t letterGrowth = 48;

LetterKey letterKeyOf(const LetterSeed &seed);

/// @p text closed so that only the holder of the seed reads it; nobody can tell who wrote it.
/// Format: a sealed box of libsodium (X25519, XSalsa20-Poly1305, nonce from both keys by BLAKE2b).
/// @param chance never used before, for the letter's own key: it is wiped with the letter's end.
std::string letterTo(const LetterKey &to, std::string_view text, const LetterSeed &chance);

/// @returns nothing when it was written to somebody else, or a single bit of it is another.
std::optional<std::string> letterOpened(std::string_view letter, const LetterSeed &seed);

} // namespace lidlark::crypto
