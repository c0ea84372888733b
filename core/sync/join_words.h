#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <string_view>

namespace lidlark::sync {

/// Each word of a joining code stands for ten bits.
inline constexpr std::size_t joinWordCount = 1024;
/// So many letters tell a word from all others.
inline constexpr std::size_t tellingLetters = 4;

/// The words of joining codes, in the order of the alphabet: plain English ones of 3 to 7 letters,
/// a to z, spelled alike in Britain and America. No two begin with the same four letters; one slip
/// of a finger (a letter too many, too few, another, or two exchanged) never makes one of another;
/// none sounds like another word, as far as an English ear can tell.
const std::array<std::string_view, joinWordCount> &joinWords();

/// Where @p word stands, in lower case: whole, or four or more of its first letters.
std::optional<std::size_t> joinWordAt(std::string_view word);

} // namespace lidlark::sync
