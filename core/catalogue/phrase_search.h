#pragma once

#include <string>
#include <string_view>

namespace lidlark::catalogue {

/// Lower case; letters beyond ASCII stay as they are.
std::string folded(std::string_view text);

/// Whether @p phrase is in @p text as words or numbers of their own, a plural "s" allowed: "cot"
/// is in "two cots", neither in "scotch" nor in "cotton". A phrase that ends with "*" is the
/// beginning of a word: "magnet*" is in "magnetic". Both in lower case.
bool hasPhrase(std::string_view text, std::string_view phrase);

/// A phrase as a message shows it: without the mark that more letters may follow.
std::string shown(std::string_view phrase);

} // namespace lidlark::catalogue
