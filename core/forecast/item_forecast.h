#pragma once

#include "core/base/day.h"
#include "core/forecast/gamma_rate.h"
#include "core/forecast/lasting.h"

#include <optional>
#include <vector>

namespace lidlark::forecast {

/// Pieces that were used up, lost or broken on one day.
struct UseDay {
    Day day;
    int pieces = 0;
};

/// Days from the first to the last, both counted.
struct DaySpan {
    Day from;
    Day to;
};

/// What is known of one item of one box. Plain values: whoever asks reads them from the journal.
struct ItemHistory {
    GammaRate prior; ///< Of the item kind.
    Day since;       ///< The first day in the box.
    Day today;
    /// Any order. Ignored: before `since`, after today, and where no piece or fewer went.
    std::vector<UseDay> uses;
    /// Any order, may overlap. No piece could go on these days, so they teach nothing; a day on
    /// which one went all the same is watched like any other.
    std::vector<DaySpan> outOfStock;
    int low = 0; ///< Pieces left: "4 or 5" is 4 and 5.
    int high = 0;
    std::optional<int> daysToRound; ///< Until the next restock round; nothing: none is known.
};

/// How long one item lasts, and on what that rests.
struct ItemForecast {
    GammaRate rate;       ///< What is believed now.
    LastingRange lasting; ///< Four times in five the last piece goes between these.
    /// Chance of running out before the round, by the lower count; nothing without a round.
    std::optional<double> emptyBeforeRound;
    int piecesSeen = 0;      ///< Pieces that went while it was watched.
    int daysWatched = 0;     ///< Days on which a piece could go; today counts.
    bool mainlyPrior = true; ///< Fewer than `fewPieces` seen: more our guess than this family.
};

inline constexpr int fewPieces = 3; ///< Judged, not measured [P].

/// @returns Invalid with the field "shape", "rate", "low", "high", "since" (after today, or more
/// than a hundred years before) or "daysToRound" (below 0, or more than mostDays).
Result<ItemForecast> forecastItem(const ItemHistory &history);

} // namespace lidlark::forecast
