#include "tests/mutation/expressions.h"
#include "tests/mutation/find_mutants.h"

namespace lidlark::mutation {

namespace {

void mutateSwitch(MutatedCopy &copy, Span value, Span body)
{
    const CppSource &source = copy.source();
    for (std::size_t i = body.first; i < body.last; i = source.after(i)) {
        if (!source.is(i, "case"))
            continue;
        Span label{i + 1, i + 1};
        while (!source.is(label.last, ":"))
            ++label.last;
        if (!source.is(label.last - 2, "::"))
            continue;
        const std::string name = source.textOf(label);
        const std::string number = copy.mutant(i, "left out: case " + name);
        copy.wrap(value, Layer::Value, callOf("unlabelled", number) + name + ", ", ")");
    }
}

} // namespace

void mutateLabels(MutatedCopy &copy)
{
    const CppSource &source = copy.source();
    for (std::size_t i = 0; i < source.size(); ++i) {
        if (!source.is(i, "switch") || !source.isLive(i))
            continue;
        const std::size_t body = source.after(i + 1);
        mutateSwitch(copy, {i + 2, source.mateOf(i + 1)}, {body + 1, source.mateOf(body)});
    }
}

void mutateFields(MutatedCopy &copy)
{
    const CppSource &source = copy.source();
    for (const Expression &expression : expressionsOf(source)) {
        const std::size_t first = expression.span.first;
        const bool isField = first >= 3 && source.is(first - 1, "=") && source.isWord(first - 2) &&
                             source.is(first - 3, ".") &&
                             source.opens(source.around(first), Brace::List);
        // An enumerator has its own mutants, and one of them may be what an empty field holds.
        const bool isEnumerator = source.is(first + 1, "::");
        if (!isField || isEnumerator || source.is(first, "{"))
            continue;
        const std::string number =
            copy.mutant(first, "left empty: " + source.textOf({first - 3, expression.span.last}));
        copy.wrap(expression.span, Layer::Field, callOf("orNothing", number), ")");
    }
}

} // namespace lidlark::mutation
