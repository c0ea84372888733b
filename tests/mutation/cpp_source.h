#pragma once

#include "tests/mutation/cpp_tokens.h"

#include <string>
#include <vector>

namespace lidlark::mutation {

/// What a brace opens.
enum class Brace { Namespace, Class, Enum, Block, List };

/// Tokens first to last, the latter excluded.
struct Span {
    std::size_t first = 0;
    std::size_t last = 0;
    [[nodiscard]] bool empty() const { return first >= last; }
};

/// One C++ file, cut into tokens, with its brackets matched and the places known at which something
/// is decided when the program runs.
class CppSource
{
public:
    static constexpr std::size_t none = static_cast<std::size_t>(-1);

    /// @param name path from the project's folder. Throws std::runtime_error for a bracket without
    /// its mate.
    CppSource(std::string name, std::string text);
    CppSource(const CppSource &) = delete;
    CppSource &operator=(const CppSource &) = delete;
    CppSource(CppSource &&) = delete;
    CppSource &operator=(CppSource &&) = delete;
    ~CppSource() = default;

    [[nodiscard]] const std::string &name() const { return m_name; }
    [[nodiscard]] const std::string &text() const { return m_text; }
    [[nodiscard]] const std::vector<Token> &tokens() const { return m_tokens; }
    [[nodiscard]] std::size_t size() const { return m_tokens.size(); }
    [[nodiscard]] const Token &at(std::size_t token) const { return m_tokens[token]; }
    [[nodiscard]] bool is(std::size_t token, std::string_view text) const
    {
        return token < m_tokens.size() && m_tokens[token].is(text);
    }
    [[nodiscard]] bool isWord(std::size_t token) const
    {
        return token < m_tokens.size() && m_tokens[token].sort == TokenSort::Word;
    }
    [[nodiscard]] bool isOpening(std::size_t token) const;
    [[nodiscard]] bool isClosing(std::size_t token) const;

    /// The other bracket of a pair.
    [[nodiscard]] std::size_t mateOf(std::size_t bracket) const { return m_mates[bracket]; }
    /// The bracket that opens the innermost pair around a token; `none` at the top.
    [[nodiscard]] std::size_t around(std::size_t token) const { return m_around[token]; }
    [[nodiscard]] bool opens(std::size_t token, Brace brace) const
    {
        return token != none && is(token, "{") && m_braces[token] == brace;
    }
    /// The parentheses after `for` or `while`.
    [[nodiscard]] bool opensLoop(std::size_t token) const;
    /// Part of a function's body, of what a constructor sets, or of the value of a constant of a
    /// namespace; no part of a case label, a static_assert or a using.
    [[nodiscard]] bool isLive(std::size_t token) const { return m_live[token]; }
    /// A sign with space on both sides: `a < b`, not `vector<int>`; `a && b`, not `auto &&a`.
    [[nodiscard]] bool isSpaced(std::size_t token) const;

    /// The first token after @p token outside the pair that it opens.
    [[nodiscard]] std::size_t after(std::size_t token) const
    {
        return isOpening(token) ? mateOf(token) + 1 : token + 1;
    }
    [[nodiscard]] int lineOf(std::size_t token) const;
    /// The line of a token, without the space around it.
    [[nodiscard]] std::string lineTextOf(std::size_t token) const;
    /// The text of a span in one line.
    [[nodiscard]] std::string textOf(Span span) const;

private:
    void matchBrackets();
    void nameBraces();
    void findLive();
    [[nodiscard]] Brace braceAt(std::size_t token) const;
    [[nodiscard]] bool isBlockBefore(std::size_t token) const;
    [[nodiscard]] bool isInsideBody(std::size_t token) const;
    [[nodiscard]] std::size_t endOfDead(std::size_t token) const;
    void findLiveOutside(std::size_t first);

    std::string m_name;
    std::string m_text;
    std::vector<Token> m_tokens;
    std::vector<std::size_t> m_mates;
    std::vector<std::size_t> m_around;
    std::vector<Brace> m_braces;
    std::vector<bool> m_live;
};

} // namespace lidlark::mutation
