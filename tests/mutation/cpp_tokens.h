#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace lidlark::mutation {

enum class TokenSort { Word, Number, Text, Sign };

/// One token of C++ text; comments and lines for the preprocessor hold none.
struct Token {
    TokenSort sort;
    std::string_view text;
    std::size_t begin; ///< Offset in the text.

    [[nodiscard]] std::size_t end() const { return begin + text.size(); }
    [[nodiscard]] bool is(std::string_view other) const { return text == other; }
};

/// The tokens of @p text, which must outlive them. Knows what clang-formatted code of this house
/// uses: no raw strings, no digraphs; ">>" is two tokens.
std::vector<Token> tokensOf(std::string_view text);

} // namespace lidlark::mutation
