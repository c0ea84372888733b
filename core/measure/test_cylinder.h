#pragma once

#include "core/measure/solid.h"

#include <optional>

namespace lidlark::measure {

/// The small parts cylinder. Source: 16 CFR 1501.4, figure 1, in whose test the inches govern:
/// inside diameter 1.25 in, bottom slanted at 45 degrees, depth 1.00 in (this one from memory) to
/// 2.25 in.
inline constexpr double cylinderDiameterMm = 31.75;
inline constexpr double leastDepthMm = 25.40;
inline constexpr double mostDepthMm = 57.15;

/// Within this of the wall counts as fitting: doubt is on the careful side (design.md 4).
inline constexpr double doubtMm = 0.2;

/// How far @p solid could grow (above 1) or must shrink (below 1) to lie just wholly inside the
/// test cylinder, nothing above the rim, in the orientation that suits it best.
/// @returns a factor at most 0.1 % from the true one. It belongs to a pose that was found, so it is
/// not above the true factor by more than rounding; save where the search had to be cut short, when
/// it is the found one and 0.08 %, and nothing is certain any more.
double largestScaleInTestCylinder(const Solid &solid);

/// Whether @p solid is a small part: it fits as it is, or would if it were smaller by less than the
/// doubt.
/// @param scale from largestScaleInTestCylinder.
bool fitsTestCylinder(const Solid &solid, double scale);

/// The hole of the small ball template, 1.75 in. Source: 16 CFR 1500.19(a)(1); the ISO and EN gauge
/// has 44.5 mm. Up to that counts as small: of three printed figures the careful one (safety.md
/// BA-03).
inline constexpr double smallBallHoleMm = 44.5;

/// Whether a ball passes the hole under its own weight. @returns nothing for what is no ball: only
/// a sphere or an ellipsoid is one.
std::optional<bool> isSmallBall(const Solid &solid);

} // namespace lidlark::measure
