#pragma once

#include "core/sync/join_code.h"

#include <cstddef>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace lidlark::sync {

/// A typed word that is not in the list.
struct UnknownWord {
    std::size_t place = 1;                 ///< Among the words that were typed, from 1.
    std::string typed;                     ///< As it was read: letters a to z.
    std::vector<std::string_view> nearest; ///< At most three from the list, the nearest first.
};

/// Why typed words are no joining code.
struct WordProblem {
    enum class Kind {
        Unknown, ///< Words that are not in the list.
        TooFew,  ///< All known, and fewer than nine.
        TooMany, ///< All known, and more than nine; or far more letters than a code has.
        Another  ///< Nine known words, and one of them is another than was shown.
    };
    Kind kind = Kind::TooFew;
    std::size_t words = 0;            ///< So many were typed.
    std::vector<UnknownWord> unknown; ///< Only for that kind; in the order they were typed.
};

/// Reads what somebody typed or pasted, in whatever way: capitals or not, spaces, commas, hyphens,
/// numbers before the words, only the first four letters of them.
std::variant<JoinSecret, WordProblem> secretFromWords(std::string_view typed);

} // namespace lidlark::sync
