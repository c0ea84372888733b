#pragma once

#include "core/forecast/item_forecast.h"
#include "core/forecast/lifetime.h"
#include "core/usecase/family.h"

#include <optional>
#include <vector>

namespace lidlark::usecase {

/// Restock rounds come about monthly (job.md 1.4), where nobody has said when the next one is. [P]
inline constexpr int daysBetweenRounds = 28;

/// How long an opened piece of a perishable stays good, four times in five.
struct KeepingOutlook {
    std::optional<int> earliestDays; ///< Nothing: longer than anybody asks about.
    std::optional<int> latestDays;
    int piecesSeen = 0; ///< Opened pieces that it rests on.
    int ended = 0;      ///< Of these, how many have come to their end.
};

/// How long one item lasts, and on what that rests.
struct ItemOutlook {
    ItemId item;
    forecast::ItemForecast forecast;
    std::optional<KeepingOutlook> keeping; ///< Perishables only.
};

/// Every item of the box that its catalogue entry gives a prior for. A pure view.
/// Errors: Invalid ("daysToRound").
Result<std::vector<ItemOutlook>> forecastBox(const Family &family,
                                             const catalogue::Catalogue &catalogue, Day today,
                                             int daysToRound = daysBetweenRounds);

/// The same for one item; nothing where nothing is known to forecast from.
Result<std::optional<ItemOutlook>> forecastOne(const store::ItemRow &row,
                                               const catalogue::ItemKind *kind, Day today,
                                               int daysToRound = daysBetweenRounds);

} // namespace lidlark::usecase
