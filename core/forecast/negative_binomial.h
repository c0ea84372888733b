#pragma once

#include "core/forecast/gamma_rate.h"

#include <cstdint>

namespace lidlark::forecast {

/// Both sides of a count. The smaller is right to 1e-12 of itself, or to a last place of the other
/// where the belief is so skewed that most of it lies below its mean.
struct Tails {
    double atMost = 1; ///< P(N <= k).
    double more = 0;   ///< P(N > k).
};

/// True when @p chance reaches @p p, where @p rest is 1 - chance. What equals p up to rounding (one
/// part in 1e12 of the smaller side, or half a last place of p) reaches it: 0.1 typed as a decimal
/// is no exact double, and a chance that comes out as 0.1 has reached it.
bool reaches(double chance, double rest, double p);

/// How many pieces go in some days when the rate is a gamma belief: the mixture of Poisson counts
/// over it, P(N = k) = G(a + k) / (G(a) k!) P^a Q^k with P = b / (b + t), Q = t / (b + t), a real.
/// Source: Johnson, Kemp, Kotz, Univariate Discrete Distributions, 3rd ed. (2005), chapter 5 (from
/// memory); Gelman and others 2013, section 2.6 and its density as read in the Stan Functions
/// Reference 2.25, section 14.1, with beta = b / t.
class NegativeBinomial
{
public:
    /// @param rate within checkRate. @param days within checkDays.
    NegativeBinomial(const GammaRate &rate, double days);

    [[nodiscard]] double mean() const { return m_shape * m_odds; }
    [[nodiscard]] double shape() const { return m_shape; }
    /// P(N = 0) = P^a, as the logarithm.
    [[nodiscard]] double logOfNone() const;
    /// Q.
    [[nodiscard]] double q() const { return m_q; }

    /// P(N = @p k), 0 for k below 0. No intermediate value over- or underflows.
    [[nodiscard]] double probabilityOf(std::int64_t k) const;
    /// Both sides of @p k, 0 or more.
    [[nodiscard]] Tails tails(std::int64_t k) const;

private:
    double m_shape;
    double m_odds; ///< t / b.
    double m_p;
    double m_q;
};

} // namespace lidlark::forecast
