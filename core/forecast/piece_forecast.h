#pragma once

#include "core/forecast/gamma_rate.h"

#include <cstdint>

namespace lidlark::forecast {

/// P(N <= @p pieces): at most so many pieces go in @p days (whole or not) of use.
/// @returns Invalid with the field "shape", "rate", "days" or "pieces" (below 0).
Result<double> probabilityOfAtMost(const GammaRate &rate, double days, std::int64_t pieces);

/// P(N > @p pieces), with all its digits where it is small. Errors as above.
Result<double> probabilityOfMoreThan(const GammaRate &rate, double days, std::int64_t pieces);

/// The smallest k with P(N <= k) >= @p p, exactly: nothing is rounded to a neighbour. A p that
/// equals the probability at k up to rounding gives k (`reaches`); 0 gives 0; in 0 days none go.
/// @returns Invalid with the field "shape", "rate", "days" or "p".
Result<std::int64_t> quantile(const GammaRate &rate, double days, double p);

} // namespace lidlark::forecast
