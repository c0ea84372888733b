#pragma once

#include "core/base/entropy.h"
#include "core/crypto/bytes.h"

#include <array>
#include <cstddef>
#include <string>
#include <string_view>

namespace lidlark::sync {

/// What a joining code carries: 80 bits of chance, shown in the room and never sent. A storage that
/// saw what was left for the new device could try shorter ones without anybody noticing (events.md
/// 10).
using JoinSecret = crypto::Secret<10>;

/// Eight words of ten bits, and one that checks them.
inline constexpr std::size_t joinCodeWords = 9;
using JoinNumbers = std::array<std::uint16_t, joinCodeWords - 1>;

JoinSecret freshJoinSecret(Entropy &entropy);

/// The secret's numbers of ten bits, the first bits first.
JoinNumbers numbersOf(const JoinSecret &secret);
JoinSecret secretOf(const JoinNumbers &numbers);

/// The nine words to be read out or typed.
std::array<std::string_view, joinCodeWords> wordsOf(const JoinSecret &secret);

/// The folder in which both devices leave what the other is to find: 64 hexadecimal digits.
std::string joinFolder(const JoinSecret &secret);
/// What is left there is sealed under this key.
crypto::SealKey joinSealKey(const JoinSecret &secret);

} // namespace lidlark::sync
