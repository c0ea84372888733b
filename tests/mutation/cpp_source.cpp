#include "tests/mutation/cpp_source.h"

#include <algorithm>
#include <cctype>
#include <stdexcept>

namespace lidlark::mutation {

CppSource::CppSource(std::string name, std::string text)
    : m_name(std::move(name)), m_text(std::move(text)), m_tokens(tokensOf(m_text)),
      m_mates(m_tokens.size(), none), m_around(m_tokens.size(), none),
      m_braces(m_tokens.size(), Brace::List), m_live(m_tokens.size(), false)
{
    matchBrackets();
    nameBraces();
    findLive();
}

bool CppSource::isOpening(std::size_t token) const
{
    return is(token, "(") || is(token, "[") || is(token, "{");
}

bool CppSource::isClosing(std::size_t token) const
{
    return is(token, ")") || is(token, "]") || is(token, "}");
}

void CppSource::matchBrackets()
{
    std::vector<std::size_t> open;
    for (std::size_t i = 0; i < m_tokens.size(); ++i) {
        if (isClosing(i)) {
            if (open.empty())
                throw std::runtime_error(m_name + ": a bracket too many");
            m_mates[i] = open.back();
            m_mates[open.back()] = i;
            open.pop_back();
        }
        m_around[i] = open.empty() ? none : open.back();
        if (isOpening(i))
            open.push_back(i);
    }
    if (!open.empty())
        throw std::runtime_error(m_name + ": a bracket is never closed");
}

bool CppSource::opensLoop(std::size_t token) const
{
    return is(token, "(") && token > 0 && (is(token - 1, "for") || is(token - 1, "while"));
}

bool CppSource::isSpaced(std::size_t token) const
{
    const auto isSpace = [this](std::size_t at) {
        return at < m_text.size() && std::isspace(static_cast<unsigned char>(m_text[at])) != 0;
    };
    const Token &sign = m_tokens[token];
    return sign.begin > 0 && isSpace(sign.begin - 1) && isSpace(sign.end());
}

int CppSource::lineOf(std::size_t token) const
{
    const auto end = m_text.begin() + static_cast<std::ptrdiff_t>(m_tokens[token].begin);
    return 1 + static_cast<int>(std::count(m_text.begin(), end, '\n'));
}

std::string CppSource::lineTextOf(std::size_t token) const
{
    const std::size_t at = m_tokens[token].begin;
    const std::size_t before = m_text.rfind('\n', at);
    const std::size_t first = m_text.find_first_not_of(" \n", before == none ? 0 : before);
    return m_text.substr(first, m_text.find('\n', at) - first);
}

std::string CppSource::textOf(Span span) const
{
    std::string text;
    for (std::size_t i = span.first; i < span.last; ++i) {
        if (i > span.first && m_tokens[i].begin > m_tokens[i - 1].end())
            text += ' ';
        text += m_tokens[i].text;
    }
    return text;
}

} // namespace lidlark::mutation
