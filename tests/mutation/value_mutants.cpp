#include "tests/mutation/find_mutants.h"

#include <algorithm>
#include <cctype>

namespace lidlark::mutation {

namespace {

/// All of `a::b::Enumeration::Value` that ends with @p value.
Span wholeName(const CppSource &source, std::size_t value)
{
    std::size_t first = value;
    while (first >= 2 && source.is(first - 1, "::") && source.isWord(first - 2))
        first -= 2;
    return {first, value + 1};
}

/// Whether @p token is the value in `enumeration::value`.
bool isValueOf(const CppSource &source, std::size_t token, std::string_view enumeration)
{
    return token >= 2 && source.isWord(token) && source.is(token - 1, "::") &&
           source.is(token - 2, enumeration) && !source.is(token + 1, "::");
}

void mutateTag(MutatedCopy &copy, Span name)
{
    const std::string number = copy.mutant(name.first, "no tag for " + copy.source().textOf(name));
    copy.wrap(name, Layer::Value, callOf("untagged", number), ")");
}

void mutateSupervision(MutatedCopy &copy, Span name)
{
    const std::string text = copy.source().textOf(name);
    const std::string next = copy.mutant(name.first, "the next value for " + text);
    const std::string nextButOne = copy.mutant(name.first, "the next value but one for " + text);
    copy.wrap(name, Layer::Value, callOf("other", next) + nextButOne + ", ", ")");
}

void mutateCode(MutatedCopy &copy, Span name)
{
    const std::string number =
        copy.mutant(name.first, "the next code for " + copy.source().textOf(name));
    copy.wrap(name, Layer::Value, callOf("nextCode", number), ")");
}

void flip(MutatedCopy &copy, std::size_t token)
{
    const std::string text(copy.source().at(token).text);
    const std::string number = copy.mutant(token, "the opposite of " + text);
    copy.replace(token, callOf("flipped", number) + text + ")");
}

/// A plain whole number that is no argument of a template.
bool isNumber(const CppSource &source, std::size_t token)
{
    const Token &text = source.at(token);
    const bool isTemplates = (source.is(token - 1, "<") || source.is(token + 1, ">")) &&
                             !source.isSpaced(source.is(token - 1, "<") ? token - 1 : token + 1);
    return text.sort == TokenSort::Number && text.text.size() < 6 && !isTemplates &&
           std::all_of(text.text.begin(), text.text.end(),
                       [](unsigned char c) { return std::isdigit(c) != 0; });
}

void mutateNumber(MutatedCopy &copy, std::size_t token)
{
    const CppSource &source = copy.source();
    const std::string text(source.at(token).text);
    const int value = std::stoi(text);
    std::vector<int> others{value + 1};
    if (value > 0)
        others.push_back(value - 1);
    if (value > 1 && source.is(token - 1, "return"))
        others.push_back(0);
    std::string choice = "(";
    for (const int other : others) {
        const std::string instead = std::to_string(other);
        const std::string number = copy.mutant(token, std::string(instead).append(" for " + text));
        choice.append(isChosen(number)).append(" ? ").append(instead).append(" : ");
    }
    copy.replace(token, choice + text + ")");
}

} // namespace

void mutateValues(MutatedCopy &copy)
{
    const CppSource &source = copy.source();
    for (std::size_t i = 0; i < source.size(); ++i) {
        if (!source.isLive(i))
            continue;
        if (isValueOf(source, i, "Tag"))
            mutateTag(copy, wholeName(source, i));
        else if (isValueOf(source, i, "Supervision"))
            mutateSupervision(copy, wholeName(source, i));
        else if (isValueOf(source, i, "ReasonCode"))
            mutateCode(copy, wholeName(source, i));
        else if (source.is(i, "true") || source.is(i, "false"))
            flip(copy, i);
        else if (isNumber(source, i))
            mutateNumber(copy, i);
    }
}

} // namespace lidlark::mutation
