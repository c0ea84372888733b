#pragma once

#include "core/forecast/gamma_rate.h"

#include <optional>

namespace lidlark::forecast {

inline constexpr int longestLastingDays = 3650; ///< What lasts longer is only called longer.

/// When the last of @p pieces goes: the smallest whole day t, from now, with P(T <= t) >= @p p,
/// where the n-th piece has gone by t exactly when at least n go in t days. 0 for no pieces;
/// nothing when it lasts longer than longestLastingDays.
/// @returns Invalid with the field "shape", "rate", "pieces" (below 0) or "p".
Result<std::optional<int>> daysUntilEmpty(const GammaRate &rate, int pieces, double p);

/// P(T <= @p days): the chance that the last of @p pieces goes within so many days. 1 for no
/// pieces.
/// @returns Invalid with the field "shape", "rate", "pieces" or "days".
Result<double> probabilityEmptyWithin(const GammaRate &rate, int pieces, int days);

/// Days from now; nothing stands for longer than longestLastingDays.
struct LastingRange {
    std::optional<int> earliest;
    std::optional<int> latest;
    bool operator==(const LastingRange &) const = default;
};

/// Between which days the last piece goes, four times in five: from the tenth in a hundred of the
/// lower count to the ninetieth of the higher, so that doubt about the count widens it.
/// @returns Invalid with the field "shape", "rate", "low" (below 0) or "high" (below low).
Result<LastingRange> lastingRange(const GammaRate &rate, int low, int high);

} // namespace lidlark::forecast
