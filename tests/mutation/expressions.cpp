#include "tests/mutation/expressions.h"

#include <algorithm>

namespace lidlark::mutation {

namespace {

constexpr std::string_view separators[] = {
    ",", ";", "=", "+=", "-=", "*=", "/=", "%=", "|=", "&=", "^=", "?", ":", "return", "else"};

bool separates(const Token &token)
{
    return std::find(std::begin(separators), std::end(separators), token.text) !=
           std::end(separators);
}

void addExpressions(const CppSource &source, Span inside, std::vector<Expression> &all)
{
    std::size_t first = inside.first;
    const auto endAt = [&](std::size_t end, const std::string &sign) {
        if (end > first && source.isLive(first))
            all.push_back({{first, end}, sign});
    };
    for (std::size_t i = inside.first; i < inside.last; i = source.after(i)) {
        const bool endsBlock = source.opens(i, Brace::Block);
        if (!separates(source.at(i)) && !endsBlock)
            continue;
        endAt(i, std::string(source.at(i).text));
        first = source.after(i);
    }
    endAt(inside.last, "");
}

} // namespace

std::vector<Expression> expressionsOf(const CppSource &source)
{
    std::vector<Expression> all;
    for (std::size_t i = 0; i < source.size(); ++i) {
        if (source.isOpening(i) && !source.opensLoop(i))
            addExpressions(source, {i + 1, source.mateOf(i)}, all);
    }
    addExpressions(source, {0, source.size()}, all);
    return all;
}

std::vector<Span> partsOf(const CppSource &source, Span span, std::string_view sign)
{
    std::vector<Span> parts;
    std::size_t first = span.first;
    for (std::size_t i = span.first; i < span.last; i = source.after(i)) {
        if (!source.is(i, sign) || !source.isSpaced(i))
            continue;
        parts.push_back({first, i});
        first = i + 1;
    }
    parts.push_back({first, span.last});
    return parts;
}

} // namespace lidlark::mutation
