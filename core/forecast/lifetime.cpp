#include "core/forecast/lifetime.h"

#include <cmath>

namespace lidlark::forecast {

Result<GammaRate> posteriorOfLives(const GammaRate &prior, std::span<const SeenLife> lives)
{
    Result<GammaRate> belief = prior;
    for (const SeenLife &life : lives) {
        belief = posterior(*belief, life.ended ? 1 : 0, life.days);
        if (!belief)
            return belief;
    }
    if (Outcome rate = checkRate(prior); !rate)
        return rate.error();
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
