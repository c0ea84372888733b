#include "core/usecase/forecast_box.h"

#include "core/usecase/stock_history.h"

#include <algorithm>
#include <cmath>

namespace lidlark::usecase {

namespace {

constexpr double earlyChance = 0.1; // four times in five lies between these
constexpr double lateChance = 0.9;

std::optional<int> wholeDays(const std::optional<double> &days)
{
    return days ? std::optional(static_cast<int>(std::floor(*days))) : std::nullopt;
}

Result<KeepingOutlook> keepingOf(const store::ItemRow &row, const forecast::GammaRate &prior,
                                 Day today)
{
    const auto lives = livesOf(row, today);
    const auto rate = forecast::posteriorOfLives(prior, lives);
    if (!rate)
        return rate.error();
    const auto earliest = forecast::lifeQuantile(*rate, earlyChance);
    const auto latest = forecast::lifeQuantile(*rate, lateChance);
    if (!earliest || !latest)
        return earliest ? latest.error() : earliest.error();
    KeepingOutlook keeping{wholeDays(*earliest), wholeDays(*latest),
                           static_cast<int>(lives.size())};
    keeping.ended = static_cast<int>(std::count_if(
        lives.begin(), lives.end(), [](const forecast::SeenLife &life) { return life.ended; }));
    return keeping;
}

} // namespace

Result<std::optional<ItemOutlook>>
forecastOne(const store::ItemRow &row, const catalogue::ItemKind *kind, Day today, int daysToRound)
{
    if (kind == nullptr || !kind->use || row.arrivals.empty() || row.arrivals.front().day > today)
        return std::optional<ItemOutlook>();
    forecast::ItemHistory history;
    history.prior = {static_cast<double>(kind->use->pieces), static_cast<double>(kind->use->days)};
    history.since = row.arrivals.front().day;
    history.today = today;
    history.uses = useDaysOf(row);
    history.outOfStock = daysWithout(row, today);
    history.low = row.low;
    history.high = row.high;
    history.daysToRound = daysToRound;
    const auto forecast = forecast::forecastItem(history);
    if (!forecast)
        return forecast.error();
    ItemOutlook outlook{row.item, *forecast, std::nullopt};
    if (kind->isPerishable()) {
        const auto keeping = keepingOf(row, history.prior, today);
        if (!keeping)
            return keeping.error();
        outlook.keeping = *keeping;
    }
    return std::optional(outlook);
}

Result<std::vector<ItemOutlook>>
forecastBox(const Family &family, const catalogue::Catalogue &catalogue, Day today, int daysToRound)
{
    std::vector<ItemOutlook> outlooks;
    for (const store::ItemRow &row : family.items) {
        const auto outlook = forecastOne(row, catalogue.item(row.item), today, daysToRound);
        if (!outlook)
            return outlook.error();
        if (*outlook)
            outlooks.push_back(**outlook);
    }
    return outlooks;
}

} // namespace lidlark::usecase
