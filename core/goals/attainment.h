#pragma once

#include <optional>
#include <span>

namespace lidlark::goals {

/// How far the goals of one child are taken to go together, where nobody says otherwise.
/// Source: Kiresuk and Sherman 1968, Community Ment Health J 4:443-453.
inline constexpr double usualCorrelation = 0.3;

inline constexpr int lowestLevel = -2;
inline constexpr int highestLevel = 2;

/// One goal as the score reads it.
struct WeighedLevel {
    double weight = 1;        ///< 0 or more; 1 where nobody weighs.
    std::optional<int> level; ///< -2 to +2, 0 is what was expected; nothing: not rated yet.
};

/// The T-score of some goals:
/// T = 50 + 10 sum(w x) / sqrt((1 - rho) sum(w^2) + rho (sum w)^2).
/// Goals that are not rated are left out of all three sums. Any order gives the same but for the
/// last bits; weights count by what they are to each other. For therapists alone: levels are
/// ordinal, and the score takes them for an interval.
/// Source: Kiresuk and Sherman 1968, in the form of the erratum to Turner-Stokes 2009, Clin Rehabil
/// 23:362-370 (the formulas printed on its pages 364 and 367 are wrong).
/// @param correlation rho, 0 to 1.
/// @returns nothing where no rated goal has a weight above 0, or for a weight below 0 or not
/// finite, a level beyond the five, a correlation beyond 0 to 1.
std::optional<double> attainmentScore(std::span<const WeighedLevel> goals,
                                      double correlation = usualCorrelation);

} // namespace lidlark::goals
