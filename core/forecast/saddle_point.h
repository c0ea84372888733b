#pragma once

namespace lidlark::forecast {

/// log G(x + 1) less Stirling's formula: log(sqrt(2 pi x)) + x log x - x. Right to about 1e-15 for
/// any x above 0.
/// Source: C. Loader, Fast and Accurate Computation of Binomial Probabilities (2000), which also
/// has `deviance`; from memory, checked in the tests against 400-digit values.
double stirlingError(double x);

/// x log(x / expected) + expected - x, which is 0 or more; both above 0. Keeps its digits where x
/// is close to what was expected and the plain formula would cancel.
double deviance(double x, double expected);

} // namespace lidlark::forecast
