#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace lidlark::goals {

/// The words without what does not tell two levels apart: capitals of the English alphabet, spaces,
/// and marks at the end.
std::string withoutTrimmings(std::string_view words);

/// The first English word of feeling or opinion: "happier", "better", "tries". Nothing: none is
/// there, which proves nothing.
std::optional<std::string> wordOfFeeling(std::string_view words);

/// How many words, parted by spaces.
int countOfWords(std::string_view words);

} // namespace lidlark::goals
