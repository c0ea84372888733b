#include "tests/mutation/cpp_tokens.h"

#include <cctype>

namespace lidlark::mutation {

namespace {

constexpr std::string_view longSigns[] = {
    "<=>", "...", "->", "::", "&&", "||", "==", "!=", "<=", ">=", "++",
    "--",  "+=",  "-=", "*=", "/=", "%=", "|=", "&=", "^=", "<<"};

bool isWordPart(char c)
{
    return std::isalnum(static_cast<unsigned char>(c)) != 0 || c == '_';
}

bool isDigit(char c)
{
    return c >= '0' && c <= '9';
}

/// Reads one text from front to back.
class Scanner
{
public:
    explicit Scanner(std::string_view text) : m_text(text) {}

    std::vector<Token> scan()
    {
        while (m_at < m_text.size())
            step();
        return std::move(m_tokens);
    }

private:
    void step()
    {
        const char c = m_text[m_at];
        if (std::isspace(static_cast<unsigned char>(c)) != 0) {
            m_isLineStart = m_isLineStart || c == '\n';
            ++m_at;
        } else if (startsWith("//") || (c == '#' && m_isLineStart)) {
            skipTo(endOfLine());
        } else if (startsWith("/*")) {
            skipTo(m_text.find("*/", m_at + 2) + 2);
        } else {
            take(c);
        }
    }

    void take(char c)
    {
        m_isLineStart = false;
        if (c == '"' || c == '\'')
            add(TokenSort::Text, endOfQuote(c));
        else if (isDigit(c))
            add(TokenSort::Number, endOfNumber());
        else if (isWordPart(c))
            add(TokenSort::Word, endOfWord());
        else
            add(TokenSort::Sign, m_at + lengthOfSign());
    }

    void add(TokenSort sort, std::size_t end)
    {
        m_tokens.push_back({sort, m_text.substr(m_at, end - m_at), m_at});
        m_at = end;
    }

    void skipTo(std::size_t end) { m_at = std::min(end, m_text.size()); }
    [[nodiscard]] bool startsWith(std::string_view sign) const
    {
        return m_text.substr(m_at).starts_with(sign);
    }

    /// A line for the preprocessor goes on after a backslash.
    [[nodiscard]] std::size_t endOfLine() const
    {
        std::size_t end = m_text.find('\n', m_at);
        while (end != std::string_view::npos && m_text[end - 1] == '\\')
            end = m_text.find('\n', end + 1);
        return end;
    }

    [[nodiscard]] std::size_t endOfQuote(char quote) const
    {
        std::size_t end = m_at + 1;
        while (end < m_text.size() && m_text[end] != quote)
            end += m_text[end] == '\\' ? 2 : 1;
        return std::min(end + 1, m_text.size());
    }

    [[nodiscard]] std::size_t endOfWord() const
    {
        std::size_t end = m_at;
        while (end < m_text.size() && isWordPart(m_text[end]))
            ++end;
        return end;
    }

    /// With suffixes, points and digit separators, so that only plain numbers are all digits.
    [[nodiscard]] std::size_t endOfNumber() const
    {
        std::size_t end = m_at;
        while (end < m_text.size() &&
               (isWordPart(m_text[end]) || m_text[end] == '.' || m_text[end] == '\''))
            ++end;
        return end;
    }

    [[nodiscard]] std::size_t lengthOfSign() const
    {
        for (const std::string_view sign : longSigns) {
            if (startsWith(sign))
                return sign.size();
        }
        return 1;
    }

    std::string_view m_text;
    std::size_t m_at = 0;
    bool m_isLineStart = true;
    std::vector<Token> m_tokens;
};

} // namespace

std::vector<Token> tokensOf(std::string_view text)
{
    return Scanner(text).scan();
}

} // namespace lidlark::mutation
