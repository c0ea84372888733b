#include "tests/mutation/cpp_source.h"

// Which braces open what, and which tokens are decided when the program runs.

namespace lidlark::mutation {

namespace {

bool isPartOfType(const Token &token)
{
    return token.sort == TokenSort::Word || token.is("::") || token.is("<") || token.is(">") ||
           token.is("*") || token.is("&");
}

} // namespace

/// Whether the tokens before a brace end the head of a function, a lambda or a statement.
bool CppSource::isBlockBefore(std::size_t token) const
{
    if (token == 0)
        return false;
    std::size_t last = token - 1;
    if (is(last, "else") || is(last, "do") || is(last, "try") || is(last, "]"))
        return true;
    while (last > 0 && isPartOfType(at(last)))
        --last;
    const bool isTyped = is(last, "->");
    for (std::size_t i = last + 1; i < token && !isTyped; ++i) {
        if (!is(i, "const") && !is(i, "noexcept") && !is(i, "override") && !is(i, "mutable"))
            return false;
    }
    return is(isTyped ? last - 1 : last, ")");
}

Brace CppSource::braceAt(std::size_t token) const
{
    const std::size_t parent = around(token);
    if (isBlockBefore(token))
        return Brace::Block;
    std::size_t first = token;
    while (first > 0 && !is(first - 1, ";") && !is(first - 1, "{") && !is(first - 1, "}") &&
           !is(first - 1, "("))
        first = isClosing(first - 1) ? mateOf(first - 1) : first - 1;
    for (std::size_t i = first; i < token; ++i) {
        if (is(i, "namespace"))
            return Brace::Namespace;
        if (is(i, "enum"))
            return Brace::Enum;
        if (is(i, "class") || is(i, "struct") || is(i, "union"))
            return Brace::Class;
    }
    // A block of its own, or one after a label.
    const bool starts = first == token || is(token - 1, ":");
    return starts && opens(parent, Brace::Block) ? Brace::Block : Brace::List;
}

void CppSource::nameBraces()
{
    for (std::size_t i = 0; i < size(); ++i) {
        if (is(i, "{"))
            m_braces[i] = braceAt(i);
    }
}

bool CppSource::isInsideBody(std::size_t token) const
{
    for (std::size_t open = around(token); open != none; open = around(open)) {
        if (opens(open, Brace::Block))
            return true;
        if (opens(open, Brace::Class) || opens(open, Brace::Enum))
            return false;
    }
    return false;
}

/// @returns where the part ends that begins with @p token and is decided by the compiler alone;
/// @p token itself where no such part begins.
std::size_t CppSource::endOfDead(std::size_t token) const
{
    const bool isLabel = is(token, "case");
    if (!isLabel && !is(token, "static_assert") && !is(token, "using"))
        return token;
    std::size_t end = token;
    while (end < size() && !is(end, isLabel ? ":" : ";"))
        ++end;
    return end;
}

/// From @p first, outside of any body: the value of a constant, or what a constructor sets.
void CppSource::findLiveOutside(std::size_t first)
{
    std::size_t end = first + 1;
    if (is(first, "{"))
        end = mateOf(first);
    else
        while (end < size() && !is(end, ";") && !isClosing(end) && !opens(end, Brace::Block))
            end = after(end);
    for (std::size_t i = first + 1; i < end; ++i)
        m_live[i] = true;
}

void CppSource::findLive()
{
    for (std::size_t i = 0; i < size(); ++i) {
        const std::size_t parent = around(i);
        if (isInsideBody(i)) {
            const std::size_t end = endOfDead(i);
            m_live[i] = end == i;
            i = end;
        } else if (parent == none || opens(parent, Brace::Namespace)) {
            const bool sets = is(i, ":") && i > 0 && is(i - 1, ")");
            if (is(i, "=") || sets || opens(i, Brace::List))
                findLiveOutside(i);
        }
    }
}

} // namespace lidlark::mutation
