#include "core/wording/count_words.h"

namespace lidlark::wording {

namespace {

Sentence fewer(const Counted &counted, const std::string &expected)
{
    const std::string name = capital(counted.name);
    const std::string pieces = std::to_string(counted.pieces);
    const int missing = counted.low - counted.pieces;
    if (counted.low < counted.high)
        return {"%1: %2 counted, %3 expected. At least %4 missing.",
                {name, pieces, expected, numberWord(missing)}};
    if (missing == 1)
        return {"%1: %2 counted, %3 expected. One is missing.", {name, pieces, expected}};
    return {"%1: %2 counted, %3 expected. %4 are missing.",
            {name, pieces, expected, capital(numberWord(missing))}};
}

} // namespace

std::optional<Sentence> countDifference(const Counted &counted)
{
    const std::string expected = fill(rangeWords(counted.low, counted.high));
    if (counted.pieces < counted.low)
        return fewer(counted, expected);
    if (counted.pieces <= counted.high)
        return std::nullopt;
    return Sentence{"%1: %2 counted, %3 expected. %4 more.",
                    {capital(counted.name), std::to_string(counted.pieces), expected,
                     capital(numberWord(counted.pieces - counted.high))}};
}

Sentence rangeWords(int low, int high)
{
    if (low == high)
        return {"%1", {std::to_string(low)}};
    if (high - low == 1)
        return {"%1 or %2", {std::to_string(low), std::to_string(high)}};
    return {"%1 to %2", {std::to_string(low), std::to_string(high)}};
}

Sentence homeAloud(int home, int all)
{
    if (home >= all && all > 1)
        return {"%1, all home", {numberWord(home)}};
    return {"%1", {numberWord(home)}};
}

} // namespace lidlark::wording
