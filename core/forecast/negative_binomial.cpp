#include "core/forecast/negative_binomial.h"

#include "core/forecast/beta_fraction.h"
#include "core/forecast/saddle_point.h"

#include <cmath>
#include <numbers>

namespace lidlark::forecast {

bool reaches(double chance, double rest, double p)
{
    constexpr double slack = 1e-12;
    constexpr double halfLastPlace = 0x1p-54; // of a p from 0.5 to 1
    if (p <= 0.5)
        return chance >= p * (1 - slack);
    return rest <= (1 - p) * (1 + slack) + halfLastPlace;
}

NegativeBinomial::NegativeBinomial(const GammaRate &rate, double days)
    : m_shape(rate.shape), m_odds(days / rate.rateDays),
      m_p(rate.rateDays / (rate.rateDays + days)), m_q(days / (rate.rateDays + days))
{
}

double NegativeBinomial::logOfNone() const
{
    return -m_shape * std::log1p(m_odds);
}

double NegativeBinomial::probabilityOf(std::int64_t k) const
{
    if (k < 0)
        return 0;
    if (k == 0)
        return std::exp(logOfNone());
    if (m_q == 0)
        return 0;
    const double count = static_cast<double>(k);
    const double trials = m_shape + count;
    // As a binomial of a real number of trials, so that only small numbers are subtracted.
    const double exponent = stirlingError(trials) - stirlingError(m_shape) - stirlingError(count) -
                            deviance(m_shape, trials * m_p) - deviance(count, trials * m_q);
    const double scale = m_shape / (2 * std::numbers::pi * trials * count);
    return std::sqrt(scale) * std::exp(exponent);
}

Tails NegativeBinomial::tails(std::int64_t k) const
{
    if (m_q == 0)
        return {1, 0};
    const double count = static_cast<double>(k);
    const double trials = m_shape + count;
    const double front = probabilityOf(k) * m_q * trials;
    // Each fraction converges fast on its own side of the mean. Far above it the tail of more is
    // small and keeps its digits; below it the tail of at most does.
    if (m_p * (trials + 1) <= m_shape) {
        const double atMost = front / betaFraction(m_shape, count + 1, m_p, m_q);
        return {atMost, 1 - atMost};
    }
    const double more = front / betaFraction(count + 1, m_shape, m_q, m_p);
    return {1 - more, more};
}

} // namespace lidlark::forecast
