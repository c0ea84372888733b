#include "core/grading/tray_tilt.h"

#include <array>
#include <cmath>
#include <numbers>

namespace lidlark::grading {

namespace {

/// Half the width of what a ball stands on, mm.
constexpr std::array<Span, 3> leverSpansMm{{{5, 12}, {2, 5}, {0.5, 2}}};
constexpr double hardCoefficient = 0.001;
constexpr double degreesInRadian = 180 / std::numbers::pi;

Span leversOf(const TrayBall &ball)
{
    if (ball.stuff == BallStuff::Hard)
        return {0, hardCoefficient * ball.acrossMm / 2};
    return leverSpansMm.at(static_cast<std::size_t>(ball.stuff));
}

} // namespace

double rollingTilt(double leverMm, double radiusMm)
{
    return std::atan2(leverMm, radiusMm) * degreesInRadian;
}

Result<TiltRange> trayTilt(const TrayBall &ball)
{
    if (!trayBallSpanMm.has(ball.acrossMm))
        return refusal("across_mm", "a ball for a tray is 15 to 150 mm across");
    const Span levers = leversOf(ball);
    const double radius = ball.acrossMm / 2;
    if (levers.high > radius)
        return refusal("across_mm", "so small a ball would stand on more than itself");
    return TiltRange{rollingTilt(levers.low, radius), rollingTilt(levers.high, radius)};
}

Result<LiftRange> trayLift(const TiltRange &tilt, double trayMm)
{
    if (!traySpanMm.has(trayMm))
        return refusal("tray_mm", "a tray is 150 to 800 mm long");
    return LiftRange{trayMm * std::sin(tilt.lowDegrees / degreesInRadian),
                     trayMm * std::sin(tilt.highDegrees / degreesInRadian)};
}

} // namespace lidlark::grading
