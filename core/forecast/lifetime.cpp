#include "core/forecast/lifetime.h"

#include <cmath>

namespace lidlark::forecast {

Result<GammaRate> posteriorOfLives(const GammaRate &prior, std::span<const SeenLife> lives)
{
    Result<GammaRate> belief = posterior(prior, 0, 0);
    for (std::size_t i = 0; belief && i < lives.size(); ++i)
        belief = posterior(*belief, lives[i].ended ? 1 : 0, lives[i].days);
    return belief;
}

Result<double> probabilityStillGood(const GammaRate &rate, double days)
{
    if (Outcome belief = checkRate(rate); !belief)
        return belief.error();
    if (Outcome span = checkDays(days); !span)
        return span.error();
    return std::exp(-rate.shape * std::log1p(days / rate.rateDays));
}

Result<std::optional<double>> lifeQuantile(const GammaRate &rate, double p)
{
    if (Outcome belief = checkRate(rate); !belief)
        return belief.error();
    if (Outcome chance = checkChance(p); !chance)
        return chance.error();
    const double days = rate.rateDays * std::expm1(-std::log1p(-p) / rate.shape);
    return days <= mostDays ? std::optional(days) : std::nullopt;
}

} // namespace lidlark::forecast
