#include "core/wording/count_words.h"

namespace lidlark::wording {

namespace {

Sentence fewer(const Counted &counted, const Sentence &expected)
{
    const Argument name = withCapital(counted.name);
    const Number pieces = inDigits(counted.pieces);
    const int missing = counted.low - counted.pieces;
    if (counted.low < counted.high)
        return {say("%1: %2 counted, %3 expected. At least %4 missing."),
                {name, pieces, expected, inWords(missing)}};
    if (missing == 1)
        return {say("%1: %2 counted, %3 expected. One is missing."), {name, pieces, expected}};
    return {say("%1: %2 counted, %3 expected. %4 are missing."),
            {name, pieces, expected, withCapital(inWords(missing))}};
}

} // namespace

std::optional<Sentence> countDifference(const Counted &counted)
{
    const Sentence expected = rangeWords(counted.low, counted.high);
    if (counted.pieces < counted.low)
        return fewer(counted, expected);
    if (counted.pieces <= counted.high)
        return std::nullopt;
    return Sentence{say("%1: %2 counted, %3 expected. %4 more."),
                    {withCapital(counted.name), inDigits(counted.pieces), expected,
                     withCapital(inWords(counted.pieces - counted.high))}};
}

Sentence rangeWords(int low, int high)
{
    if (low == high)
        return {say("%1"), {inDigits(low)}};
    if (high - low == 1)
        return {say("%1 or %2"), {inDigits(low), inDigits(high)}};
    return {say("%1 to %2"), {inDigits(low), inDigits(high)}};
}

Sentence wentOutWords(int out, int home)
{
    return {say("%1 went out. %2 home."), {withCapital(inWords(out)), withCapital(inWords(home))}};
}

Sentence countedAloud(int pieces)
{
    return {say("%1"), {inWords(pieces)}};
}

Sentence homeAloud(int home, int all)
{
    if (home >= all && all > 1)
        return {say("%1, all home"), {inWords(home)}};
    return countedAloud(home);
}

} // namespace lidlark::wording
