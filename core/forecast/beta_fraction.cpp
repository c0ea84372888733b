#include "core/forecast/beta_fraction.h"

#include <cmath>
#include <limits>

namespace lidlark::forecast {

namespace {

/// Lentz divides by these; a zero would stop it.
double awayFromZero(double value)
{
    constexpr double tiny = 1e-290;
    return std::abs(value) < tiny ? tiny : value;
}

} // namespace

double betaFraction(double a, double b, double x, double y)
{
    constexpr double enough = std::numeric_limits<double>::epsilon();
    constexpr int mostSteps = 1'000'000; // the widest belief needs some thousands
    const double gap = a * y - b * x + 1;
    double fraction = awayFromZero(a * gap / (a + 1));
    double c = fraction;
    double d = 0;
    for (double m = 1; m < mostSteps; ++m) {
        const double middle = a + 2 * m - 1;
        const double upper =
            (a + m - 1) / middle * ((a + b + m - 1) / middle) * m * (b - m) * x * x;
        const double lower =
            m + m * (b - m) * x / middle + (a + m) * (gap + m * (1 + y)) / (middle + 2);
        d = 1 / awayFromZero(lower + upper * d);
        c = awayFromZero(lower + upper / c);
        const double change = c * d;
        fraction *= change;
        if (std::abs(change - 1) <= enough)
            break;
    }
    return fraction;
}

} // namespace lidlark::forecast
