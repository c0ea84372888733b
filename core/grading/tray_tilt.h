#pragma once

#include "core/base/enum_names.h"
#include "core/base/result.h"
#include "core/grading/refusal.h"

#include <cstdint>

namespace lidlark::grading {

/// What a ball on a bare, hard tray is made of.
enum class BallStuff : std::uint8_t { LoosePaper, TightPaper, Felt, Hard };
inline constexpr EnumNames<BallStuff, 4> ballStuffNames{
    {"loose-paper", "tight-paper", "felt", "hard"}};

struct TrayBall {
    BallStuff stuff = BallStuff::LoosePaper;
    double acrossMm = 60;
};

inline constexpr Span trayBallSpanMm{15, 150};

/// Between which tilts of a tray a ball begins to roll: below `low` it stays, above `high` it goes.
struct TiltRange {
    double lowDegrees = 0;
    double highDegrees = 0;
    bool operator==(const TiltRange &) const = default;
};

/// Tilt at which a ball begins to roll: its weight stands above the front edge of what it rests on.
///
///     tan(angle) = lever arm / radius
///
/// @param leverMm how far the front edge lies before the middle of the patch it stands on, mm.
/// @returns degrees. Source: the coefficient of rolling resistance with the unit of a length, force
/// = coefficient * load / radius (engineersedge.com, laws of rolling friction (a), read), set equal
/// to load * tan(angle), the pull of gravity along a slope.
double rollingTilt(double leverMm, double radiusMm);

/// How far the tray may tilt. A crumpled ball stands on the flats between its creases, felt gives
/// way under its weight, a hard ball has almost nothing to stand on. Source: hard balls on hard
/// ground, coefficient below 0.001: R. Cross, "Rolling to a stop down an inclined plane", European
/// Journal of Physics 36 (2015) 065047, introduction (read). Nothing published was found for paper
/// or felt: their lever arms (loose paper 5 to 12 mm, tight paper 2 to 5 mm, felt 0.5 to 2 mm) are
/// judged, to be measured; hence a range. A steep tray lets a ball slide before it rolls; paper
/// began to slide under things at 16 to 26 degrees (hypertextbook.com, facts 2005, read).
/// @returns ErrorCode::Invalid, "across_mm: ...", for a ball outside the span above.
Result<TiltRange> trayTilt(const TrayBall &ball);

/// The same as a lift: how far one end of a tray may be above the other.
struct LiftRange {
    double lowMm = 0;
    double highMm = 0;
};

inline constexpr Span traySpanMm{150, 800};

/// lift = length * sin(tilt). @returns mm; "tray_mm: ..." for a length outside the span above.
Result<LiftRange> trayLift(const TiltRange &tilt, double trayMm);

} // namespace lidlark::grading
