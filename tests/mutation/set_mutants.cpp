#include "tests/mutation/expressions.h"
#include "tests/mutation/find_mutants.h"

namespace lidlark::mutation {

namespace {

void leaveOutOfUnion(MutatedCopy &copy, const std::vector<Span> &parts)
{
    for (const Span part : parts) {
        const std::string number =
            copy.mutant(part.first, "left out of |: " + copy.source().textOf(part));
        copy.wrap(part, Layer::Union, callOf("orNothing", number), ")");
    }
}

/// Only for two parts: the house writes no longer ones.
void leaveOutOfOverlap(MutatedCopy &copy, const std::vector<Span> &parts)
{
    const CppSource &source = copy.source();
    const std::string first =
        copy.mutant(parts[0].first, "left out of &: " + source.textOf(parts[0]));
    const std::string second =
        copy.mutant(parts[1].first, "left out of &: " + source.textOf(parts[1]));
    copy.wrap({parts[0].first, parts[1].last}, Layer::Overlap,
              callOf("both", first) + second + ", ", ")");
    copy.replace(parts[0].last, ",");
}

void mutateLeaf(MutatedCopy &copy, Span leaf)
{
    const std::vector<Span> united = partsOf(copy.source(), leaf, "|");
    if (united.size() > 1)
        leaveOutOfUnion(copy, united);
    for (const Span part : united) {
        const std::vector<Span> overlapping = partsOf(copy.source(), part, "&");
        if (overlapping.size() == 2)
            leaveOutOfOverlap(copy, overlapping);
    }
}

/// `a.without(b)`: nothing taken away. Tags in braces have mutants of their own.
void mutateDifference(MutatedCopy &copy, std::size_t opening)
{
    const Span taken{opening + 1, copy.source().mateOf(opening)};
    const std::string number =
        copy.mutant(opening - 1, "takes nothing away: " + copy.source().textOf(taken));
    copy.wrap(taken, Layer::Condition, callOf("orNothing", number), ")");
}

/// `std::max(a, b)`: the smaller, and the other way round.
void mutateExtreme(MutatedCopy &copy, std::size_t name, const std::string &function)
{
    const CppSource &source = copy.source();
    const std::string number =
        copy.mutant(name, "the other extreme: " + source.textOf({name, source.after(name + 1)}));
    copy.replace(name - 2, "");
    copy.replace(name - 1, "");
    copy.replace(name, callOf(function, number));
    copy.replace(name + 1, "");
}

} // namespace

void mutateSets(MutatedCopy &copy)
{
    const CppSource &source = copy.source();
    for (std::size_t i = 2; i + 1 < source.size(); ++i) {
        if (!source.isLive(i) || !source.is(i + 1, "("))
            continue;
        if (source.is(i, "without") && !source.is(i + 2, "{"))
            mutateDifference(copy, i + 1);
        else if (source.is(i - 2, "std") && (source.is(i, "max") || source.is(i, "min")))
            mutateExtreme(copy, i, source.is(i, "max") ? "larger" : "smaller");
    }
    for (const Expression &expression : expressionsOf(source)) {
        for (const Span part : partsOf(source, expression.span, "||")) {
            for (const Span leaf : partsOf(source, part, "&&"))
                mutateLeaf(copy, leaf);
        }
    }
}

} // namespace lidlark::mutation
