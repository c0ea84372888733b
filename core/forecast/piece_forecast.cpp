#include "core/forecast/piece_forecast.h"

#include "core/forecast/negative_binomial.h"

#include <cmath>
#include <optional>

namespace lidlark::forecast {

namespace {

Outcome checkAsked(const GammaRate &rate, double days)
{
    if (Outcome belief = checkRate(rate); !belief)
        return belief;
    return checkDays(days);
}

Result<Tails> tailsAt(const GammaRate &rate, double days, std::int64_t pieces)
{
    if (Outcome asked = checkAsked(rate, days); !asked)
        return asked.error();
    if (pieces < 0)
        return Error{ErrorCode::Invalid, "pieces: must be 0 or more"};
    return NegativeBinomial(rate, days).tails(pieces);
}

/// A running sum that keeps what each addition loses (Kahan 1965, as changed by Neumaier 1974; from
/// memory). All that is added here is positive and the sum is at most 1.
class CarefulSum
{
public:
    explicit CarefulSum(double first) : m_sum(first) {}
    void add(double value)
    {
        const double sum = m_sum + value;
        m_lost +=
            std::abs(m_sum) >= std::abs(value) ? (m_sum - sum) + value : (value - sum) + m_sum;
        m_sum = sum;
    }
    [[nodiscard]] double value() const { return m_sum + m_lost; }

private:
    double m_sum;
    double m_lost = 0;
};

/// Adds up P(N = 0), P(N = 1) ... until p is passed by more than the sum can be wrong. Nothing
/// where that cannot be told, or would take long: `bySearching` can always tell.
std::optional<std::int64_t> byAdding(const NegativeBinomial &pieces, double p)
{
    constexpr std::int64_t mostTerms = 2'000;
    constexpr double clear = 1e-11;        // far above what 2,000 roundings of the terms come to
    constexpr double leastLogOfNone = -30; // exp of less loses digits
    if (pieces.logOfNone() < leastLogOfNone || p > 1 - 2 * clear)
        return std::nullopt;
    double term = std::exp(pieces.logOfNone());
    CarefulSum sum(term);
    for (std::int64_t k = 0; k < mostTerms; ++k) {
        const double reached = sum.value();
        if (reached > p + clear)
            return k;
        if (reached > p - clear)
            return std::nullopt;
        const double count = static_cast<double>(k);
        term *= (pieces.shape() + count) / (count + 1) * pieces.q();
        sum.add(term);
    }
    return std::nullopt;
}

/// Doubles, then halves, on the probability itself, which only grows with k.
std::int64_t bySearching(const NegativeBinomial &pieces, double p)
{
    const auto enough = [&](std::int64_t k) {
        const Tails tails = pieces.tails(k);
        return reaches(tails.atMost, tails.more, p);
    };
    if (enough(0))
        return 0;
    std::int64_t below = 0;
    auto above = static_cast<std::int64_t>(pieces.mean()) + 1;
    while (!enough(above)) {
        below = above;
        above *= 2;
    }
    while (above - below > 1) {
        const std::int64_t middle = below + (above - below) / 2;
        (enough(middle) ? above : below) = middle;
    }
    return above;
}

} // namespace

Result<double> probabilityOfAtMost(const GammaRate &rate, double days, std::int64_t pieces)
{
    const Result<Tails> tails = tailsAt(rate, days, pieces);
    return tails ? Result<double>(tails->atMost) : tails.error();
}

Result<double> probabilityOfMoreThan(const GammaRate &rate, double days, std::int64_t pieces)
{
    const Result<Tails> tails = tailsAt(rate, days, pieces);
    return tails ? Result<double>(tails->more) : tails.error();
}

Result<std::int64_t> quantile(const GammaRate &rate, double days, double p)
{
    if (Outcome asked = checkAsked(rate, days); !asked)
        return asked.error();
    if (Outcome chance = checkChance(p); !chance)
        return chance.error();
    const NegativeBinomial pieces(rate, days);
    if (p == 0 || pieces.q() == 0)
        return std::int64_t{0};
    if (const std::optional<std::int64_t> added = byAdding(pieces, p))
        return *added;
    return bySearching(pieces, p);
}

} // namespace lidlark::forecast
