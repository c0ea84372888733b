#pragma once

namespace lidlark::grading {

/// Up to here the formula below holds; soon after, the drag of a smooth ball falls away.
inline constexpr double mostReynolds = 2e5;

/// Drag coefficient of a smooth ball at a steady speed.
///
///     Cd = 24 / Re (1 + 0.15 Re^0.681) + 0.407 / (1 + 8710 / Re)
///
/// @param reynolds density * speed * width / viscosity; above 0, at most mostReynolds.
/// Source: P. P. Brown, D. F. Lawler, "Sphere drag and settling velocity revisited", Journal of
/// Environmental Engineering 129 (2003) 222-231, equation 19 (read as quoted in programs that cite
/// it, not in the paper itself).
double sphereDrag(double reynolds);

} // namespace lidlark::grading
