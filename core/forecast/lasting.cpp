#include "core/forecast/lasting.h"

#include "core/forecast/negative_binomial.h"

namespace lidlark::forecast {

namespace {

constexpr double earlyChance = 0.1;
constexpr double lateChance = 0.9;

Outcome checkPieces(int pieces)
{
    if (pieces >= 0)
        return Done{};
    return Error{ErrorCode::Invalid, "pieces: must be 0 or more"};
}

bool emptyBy(const GammaRate &rate, int pieces, int days, double p)
{
    const Tails tails = NegativeBinomial(rate, days).tails(pieces - 1);
    return reaches(tails.more, tails.atMost, p);
}

} // namespace

Result<std::optional<int>> daysUntilEmpty(const GammaRate &rate, int pieces, double p)
{
    if (Outcome belief = checkRate(rate); !belief)
        return belief.error();
    if (Outcome count = checkPieces(pieces); !count)
        return count.error();
    if (Outcome chance = checkChance(p); !chance)
        return chance.error();
    if (pieces == 0 || p == 0)
        return std::optional<int>(0);
    if (!emptyBy(rate, pieces, longestLastingDays, p))
        return std::optional<int>();
    int before = 0; // none are gone in no days
    int after = longestLastingDays;
    while (after - before > 1) {
        const int middle = before + (after - before) / 2;
        (emptyBy(rate, pieces, middle, p) ? after : before) = middle;
    }
    return std::optional<int>(after);
}

Result<double> probabilityEmptyWithin(const GammaRate &rate, int pieces, int days)
{
    if (Outcome belief = checkRate(rate); !belief)
        return belief.error();
    if (Outcome count = checkPieces(pieces); !count)
        return count.error();
    if (Outcome span = checkDays(days); !span)
        return span.error();
    if (pieces == 0)
        return 1.0;
    return NegativeBinomial(rate, days).tails(pieces - 1).more;
}

Result<LastingRange> lastingRange(const GammaRate &rate, int low, int high)
{
    if (low < 0)
        return Error{ErrorCode::Invalid, "low: must be 0 or more"};
    if (high < low)
        return Error{ErrorCode::Invalid, "high: must not be below low"};
    const auto earliest = daysUntilEmpty(rate, low, earlyChance);
    if (!earliest)
        return earliest.error();
    const auto latest = daysUntilEmpty(rate, high, lateChance);
    if (!latest)
        return latest.error();
    return LastingRange{*earliest, *latest};
}

} // namespace lidlark::forecast
