#include "tests/mutation/expressions.h"
#include "tests/mutation/find_mutants.h"

namespace lidlark::mutation {

namespace {

const std::string spoken = "::lidlark::mutation::";

void leaveOutOfUnion(MutatedCopy &copy, const std::vector<Span> &parts)
{
    for (const Span part : parts) {
        const std::string number =
            copy.mutant(part.first, "left out of |: " + copy.source().textOf(part));
        copy.wrap(part, Layer::Union, spoken + "orNothing(" + number + ", ", ")");
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
              spoken + "both(" + first + ", " + second + ", ", ")");
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

} // namespace

void mutateSets(MutatedCopy &copy)
{
    for (const Expression &expression : expressionsOf(copy.source())) {
        for (const Span part : partsOf(copy.source(), expression.span, "||")) {
            for (const Span leaf : partsOf(copy.source(), part, "&&"))
                mutateLeaf(copy, leaf);
        }
    }
}

} // namespace lidlark::mutation
