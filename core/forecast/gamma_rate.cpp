#include "core/forecast/gamma_rate.h"

#include <string>

namespace lidlark::forecast {

namespace {

/// Written so that what is not a number fails.
Outcome within(const char *field, double value, double least, double most, const char *range)
{
    if (value >= least && value <= most)
        return Done{};
    return Error{ErrorCode::Invalid, std::string(field) + ": must be " + range};
}

} // namespace

Outcome checkRate(const GammaRate &rate)
{
    if (Outcome shape = within("shape", rate.shape, leastShape, mostShape,
                               "a number above 0, from 0.000001 to 100,000");
        !shape)
        return shape;
    return within("rate", rate.rateDays, leastRateDays, mostRateDays,
                  "a number of days above 0, from 0.000001 to 1,000,000,000");
}

Outcome checkDays(double days)
{
    return within("days", days, 0, mostDays, "0 to 36,500");
}

Outcome checkChance(double p)
{
    if (p >= 0 && p < 1)
        return Done{};
    return Error{ErrorCode::Invalid, "p: must be from 0 up to, but not, 1"};
}

Result<GammaRate> posterior(const GammaRate &prior, std::int64_t pieces, double days)
{
    if (Outcome rate = checkRate(prior); !rate)
        return rate.error();
    if (pieces < 0)
        return Error{ErrorCode::Invalid, "pieces: must be 0 or more"};
    if (Outcome span = checkDays(days); !span)
        return span.error();
    const GammaRate updated{prior.shape + static_cast<double>(pieces), prior.rateDays + days};
    if (Outcome rate = checkRate(updated); !rate)
        return rate.error();
    return updated;
}

} // namespace lidlark::forecast
