#include "core/forecast/saddle_point.h"

#include <cmath>

namespace lidlark::forecast {

double stirlingError(double x)
{
    constexpr double large = 16;
    double error = 0;
    // From one whole step to the next the error falls by a small amount that is known exactly.
    for (; x < large; x += 1)
        error += (x + 0.5) * std::log1p(1 / x) - 1;
    const double square = x * x;
    // Stirling's series; the first term left out is 1 / 156 x^-13 at most, 1e-18.
    double series = 691.0 / 360360;
    series = 1.0 / 1188 - series / square;
    series = 1.0 / 1680 - series / square;
    series = 1.0 / 1260 - series / square;
    series = 1.0 / 360 - series / square;
    series = 1.0 / 12 - series / square;
    return error + series / x;
}

double deviance(double x, double expected)
{
    constexpr double close = 0.1;
    const double gap = x - expected;
    if (std::abs(gap) >= close * (x + expected))
        return x * std::log(x / expected) - gap;
    // log(x / expected) = 2 artanh(v); the first terms of its series are taken out by hand.
    const double v = gap / (x + expected);
    double sum = gap * v;
    double term = 2 * x * v;
    for (int odd = 3;; odd += 2) {
        term *= v * v;
        const double next = sum + term / odd;
        if (next == sum)
            return sum;
        sum = next;
    }
}

} // namespace lidlark::forecast
