#include "tests/mutation/find_mutants.h"

#include <algorithm>

namespace lidlark::mutation {

namespace {

constexpr std::string_view otherStatements[] = {
    "return", "break",  "continue", "if",       "for",      "while", "do",
    "else",   "switch", "case",     "default",  "using",    "const", "constexpr",
    "static", "auto",   "throw",    "template", "typename", "try",   "static_assert"};
constexpr std::string_view settings[] = {"=", "+=", "-=", "|=", "&="};

template <class Words> bool isOneOf(const Words &words, const Token &token)
{
    return std::find(std::begin(words), std::end(words), token.text) != std::end(words);
}

bool opensStatementHead(const CppSource &source, std::size_t token)
{
    return source.opensLoop(token) || (token > 0 && source.is(token - 1, "if"));
}

bool startsStatement(const CppSource &source, std::size_t token)
{
    if (token == 0 || !source.isLive(token) || !source.opens(source.around(token), Brace::Block))
        return false;
    const std::size_t before = token - 1;
    if (source.is(before, ")"))
        return opensStatementHead(source, source.mateOf(before));
    return source.is(before, ";") || source.is(before, "{") || source.is(before, "}") ||
           source.is(before, "else");
}

/// The end of `a.b->c(...)`, `a[...]` from @p first on.
std::size_t endOfChain(const CppSource &source, std::size_t first)
{
    std::size_t end = first + 1;
    while (end < source.size()) {
        const bool isLink = source.is(end, ".") || source.is(end, "->") || source.is(end, "::");
        if (isLink && source.isWord(end + 1))
            end += 2;
        else if (source.is(end, "(") || source.is(end, "["))
            end = source.after(end);
        else
            break;
    }
    return end;
}

/// @returns the statement that begins with @p first, its semicolon included, if it only calls or
/// sets something.
Span plainStatement(const CppSource &source, std::size_t first)
{
    std::size_t start = first;
    if (source.is(first, "++") || source.is(first, "--"))
        ++start;
    if (!source.isWord(start) || isOneOf(otherStatements, source.at(start)))
        return {};
    std::size_t end = endOfChain(source, start);
    const bool calls = source.is(end, ";") && source.is(end - 1, ")");
    const bool counts = source.is(end, ";") && start > first;
    if (!calls && !counts && !isOneOf(settings, source.at(end)))
        return {};
    while (!source.is(end, ";"))
        end = source.after(end);
    return {first, end + 1};
}

} // namespace

void mutateStatements(MutatedCopy &copy)
{
    const CppSource &source = copy.source();
    for (std::size_t i = 0; i < source.size(); ++i) {
        const Span statement = startsStatement(source, i) ? plainStatement(source, i) : Span{};
        if (statement.empty())
            continue;
        const std::string number = copy.mutant(i, "skipped: " + source.textOf(statement));
        // In braces, so that an `else` after it stays with its own `if`.
        copy.wrap(statement, Layer::Statement, "{ if (!" + isChosen(number) + ") ", " }");
    }
}

void mutateRuleLists(MutatedCopy &copy, const std::set<std::string> &functions)
{
    const CppSource &source = copy.source();
    for (std::size_t i = 1; i + 1 < source.size(); ++i) {
        const bool isElement = (source.is(i - 1, "{") || source.is(i - 1, ",")) &&
                               (source.is(i + 1, ",") || source.is(i + 1, "}"));
        if (!isElement || !source.isLive(i) || !source.opens(source.around(i), Brace::List) ||
            !functions.contains(std::string(source.at(i).text)))
            continue;
        const std::string number =
            copy.mutant(i, "left out of the rules: " + source.textOf({i, i + 1}));
        copy.wrap({i, i + 1}, Layer::Value, callOf("skipped", number), ")");
    }
}

std::set<std::string> functionsWithoutValue(const CppSource &source)
{
    std::set<std::string> names;
    for (std::size_t i = 0; i + 2 < source.size(); ++i) {
        if (source.is(i, "void") && source.isWord(i + 1) && source.is(i + 2, "("))
            names.insert(std::string(source.at(i + 1).text));
    }
    return names;
}

} // namespace lidlark::mutation
