#pragma once

#include <optional>

namespace lidlark::grading {

/// A ball that sinks through the air of a room, let go at rest.
struct FallingBody {
    double drivingN = 0;  ///< Weight less what the air around it bears, N; above 0.
    double inertiaKg = 0; ///< All that has to be set moving, the air around it included; above 0.
    double acrossM = 0;   ///< Width; above 0.
};

/// Drag coefficient over the Reynolds number, 0 to mostReynolds.
using DragCurve = double (*)(double reynolds);

/// The steady speed at which drag, 1/2 density speed^2 Cd pi width^2 / 4, bears the driving force.
/// @returns m/s; nothing for a body that is not (sizes above) or falls faster than the curve knows.
std::optional<double> terminalSpeed(const FallingBody &body, DragCurve drag);

/// How long @p body takes for the first @p dropM of its fall: inertia * acceleration = driving
/// force
/// - drag at the speed of the moment, integrated by the classical Runge-Kutta method (fourth
/// order). The wake needs a while to build up; drag that lags behind speed is left out.
/// @returns seconds; nothing where there is no terminal speed, or dropM is not above 0, or so long
/// that it would take a million steps.
std::optional<double> secondsToFall(const FallingBody &body, double dropM, DragCurve drag);

} // namespace lidlark::grading
