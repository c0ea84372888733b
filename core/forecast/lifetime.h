#pragma once

#include "core/forecast/gamma_rate.h"

#include <optional>
#include <span>

namespace lidlark::forecast {

/// What was seen of one perishable piece.
struct SeenLife {
    double days = 0;    ///< From opening to its end, or to today.
    bool ended = false; ///< It dried out or went off. Else it is still good, or left for another
                        ///< reason: its days count, and nothing is said of its end.
};

/// The belief about how many pieces spoil a day of one piece's life, after these were seen. Lives
/// are exponential: each end adds one to the shape, each day of each life one to the rate.
/// Source: NIST/SEMATECH e-Handbook of Statistical Methods, 8.4.6 (a' = a + r, b' = b + T), and
/// 8.4.5.1 for censored lives (total time by total failures); both read in a stored copy.
/// @returns Invalid with the field "shape", "rate" or "days" (below 0, or no number).
Result<GammaRate> posteriorOfLives(const GammaRate &prior, std::span<const SeenLife> lives);

/// P(life > @p days) of a new piece: (b / (b + t))^a, a Pareto distribution of the second kind
/// (Lomax). Of a piece that has already been good for s days it is the same with b + s for b.
/// @returns Invalid with the field "shape", "rate" or "days".
Result<double> probabilityStillGood(const GammaRate &rate, double days);

/// The days t with P(life <= t) = @p p: b ((1 - p)^(-1/a) - 1). Nothing where that is more than
/// mostDays.
/// @returns Invalid with the field "shape", "rate" or "p".
Result<std::optional<double>> lifeQuantile(const GammaRate &rate, double p);

} // namespace lidlark::forecast
