#pragma once

#include "core/base/result.h"

#include <cstdint>

namespace lidlark::forecast {

/// What is believed about how many pieces go a day, or how many spoil: a gamma distribution, as if
/// `shape` pieces had been seen to go in `rateDays` days. Its mean is shape / rateDays a day.
struct GammaRate {
    double shape = 1;
    double rateDays = 1;
    bool operator==(const GammaRate &) const = default;
};

/// What a belief may be: wide enough for anything a box can teach, narrow enough for exact sums.
inline constexpr double leastShape = 1e-6;
inline constexpr double mostShape = 1e5;
inline constexpr double leastRateDays = 1e-6;
inline constexpr double mostRateDays = 1e9;
inline constexpr double mostDays = 36'500; ///< A hundred years.

/// Done, or Invalid with the field: "shape" or "rate".
Outcome checkRate(const GammaRate &rate);
/// Done, or Invalid with the field "days": not a number, below 0, above mostDays.
Outcome checkDays(double days);
/// Done, or Invalid with the field "p": a chance lies from 0 up to but not 1, which no count
/// reaches.
Outcome checkChance(double p);

/// The belief after @p pieces were seen to go in @p days of watching. Poisson counts leave a gamma
/// belief gamma: the pieces add to the shape, the days to the rate. Two updates are one with the
/// sums, in any order.
/// Source: Gelman and others, Bayesian Data Analysis, 3rd ed. (2013), section 2.6 (the book from
/// memory; the rule read in a solution of its exercise 2.18, briancallander.com).
/// @returns Invalid with the field "shape", "rate", "pieces" or "days".
Result<GammaRate> posterior(const GammaRate &prior, std::int64_t pieces, double days);

} // namespace lidlark::forecast
