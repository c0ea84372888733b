#include "tests/mutation/expressions.h"
#include "tests/mutation/find_mutants.h"

#include <utility>

namespace lidlark::mutation {

namespace {

void neverAndAlways(MutatedCopy &copy, Span condition, const std::string &name)
{
    const std::string text = name + ": " + copy.source().textOf(condition);
    const std::string never = copy.mutant(condition.first, "never: " + text);
    const std::string always = copy.mutant(condition.first, "always: " + text);
    copy.wrap(condition, Layer::Condition,
              "(!" + isChosen(never) + " && (" + isChosen(always) + " || (", ")))");
}

/// `if (T *p = x)`; always true would read what is not there.
void neverDeclared(MutatedCopy &copy, Span value)
{
    const std::string never = copy.mutant(value.first, "never: if: " + copy.source().textOf(value));
    copy.wrap(value, Layer::Condition, callOf("orNothing", never), ")");
}

void mutateIf(MutatedCopy &copy, std::size_t opening)
{
    const CppSource &source = copy.source();
    Span condition{opening + 1, source.mateOf(opening)};
    bool declares = false;
    for (std::size_t i = condition.first; i < condition.last; i = source.after(i)) {
        if (source.is(i, ";") || source.is(i, "=")) {
            declares = source.is(i, "=");
            condition.first = i + 1;
        }
    }
    if (declares)
        neverDeclared(copy, condition);
    else
        neverAndAlways(copy, condition, "if");
}

/// @param neutral what the operand is replaced by: "true" for `&&`, "false" for `||`.
void dropOperands(MutatedCopy &copy, Span span, const std::string &sign)
{
    const CppSource &source = copy.source();
    const std::vector<Span> operands = partsOf(source, span, sign);
    if (operands.size() < 2)
        return;
    for (const Span operand : operands) {
        const std::string number =
            copy.mutant(operand.first, "left out of " + sign + ": " + source.textOf(operand));
        if (sign == "&&")
            copy.wrap(operand, Layer::Both, "(" + isChosen(number) + " || (", "))");
        else
            copy.wrap(operand, Layer::Either, "(!" + isChosen(number) + " && (", "))");
    }
}

const std::pair<std::string_view, const char *> comparisons[] = {{"<", "below"}, {"<=", "atMost"},
                                                                 {">", "above"}, {">=", "atLeast"},
                                                                 {"==", "same"}, {"!=", "differs"}};

const char *functionFor(const Token &sign)
{
    for (const auto &[text, name] : comparisons) {
        if (sign.is(text))
            return name;
    }
    return nullptr;
}

/// @param span holds neither `&&` nor `||`.
void mutateComparison(MutatedCopy &copy, Span span)
{
    const CppSource &source = copy.source();
    std::size_t sign = CppSource::none;
    for (std::size_t i = span.first; i < span.last; i = source.after(i)) {
        if (!functionFor(source.at(i)) || !source.isSpaced(i))
            continue;
        if (sign != CppSource::none)
            return;
        sign = i;
    }
    if (sign == CppSource::none)
        return;
    const std::string number = copy.mutant(sign, "the other comparison: " + source.textOf(span));
    copy.wrap(span, Layer::Comparison, callOf(functionFor(source.at(sign)), number), ")");
    copy.replace(sign, ",");
}

} // namespace

void mutateConditions(MutatedCopy &copy)
{
    const CppSource &source = copy.source();
    for (std::size_t i = 0; i < source.size(); ++i) {
        if (source.is(i, "if") && source.isLive(i) && source.is(i + 1, "("))
            mutateIf(copy, i + 1);
    }
    for (const Expression &expression : expressionsOf(source)) {
        if (expression.endedBy == "?")
            neverAndAlways(copy, expression.span, "choice");
    }
}

void mutateOperands(MutatedCopy &copy)
{
    for (const Expression &expression : expressionsOf(copy.source())) {
        dropOperands(copy, expression.span, "||");
        for (const Span part : partsOf(copy.source(), expression.span, "||"))
            dropOperands(copy, part, "&&");
    }
}

void mutateComparisons(MutatedCopy &copy)
{
    for (const Expression &expression : expressionsOf(copy.source())) {
        for (const Span part : partsOf(copy.source(), expression.span, "||")) {
            for (const Span leaf : partsOf(copy.source(), part, "&&"))
                mutateComparison(copy, leaf);
        }
    }
}

} // namespace lidlark::mutation
