#include "core/grading/falling_body.h"

#include "core/grading/air.h"
#include "core/grading/sphere_drag.h"

#include <cmath>
#include <numbers>

namespace lidlark::grading {

namespace {

constexpr int mostSteps = 1'000'000;
/// Steps within the time a body needs to come near its terminal speed.
constexpr double stepsToSettle = 200;

bool isAmount(double value)
{
    return std::isfinite(value) && value > 0;
}

double dragAt(const FallingBody &body, double speed, DragCurve drag)
{
    if (!(speed > 0))
        return 0;
    const double reynolds = airDensity * speed * body.acrossM / airViscosity;
    const double section = std::numbers::pi / 4 * body.acrossM * body.acrossM;
    return 0.5 * airDensity * speed * speed * section * drag(reynolds);
}

struct Motion {
    double fallen = 0; ///< m.
    double speed = 0;  ///< m/s.
};

Motion stepped(const FallingBody &body, const Motion &from, double seconds, DragCurve drag)
{
    const auto accelerationAt = [&](double speed) {
        return (body.drivingN - dragAt(body, speed, drag)) / body.inertiaKg;
    };
    const double v1 = from.speed;
    const double a1 = accelerationAt(v1);
    const double v2 = from.speed + seconds / 2 * a1;
    const double a2 = accelerationAt(v2);
    const double v3 = from.speed + seconds / 2 * a2;
    const double a3 = accelerationAt(v3);
    const double v4 = from.speed + seconds * a3;
    const double a4 = accelerationAt(v4);
    return {from.fallen + seconds / 6 * (v1 + 2 * v2 + 2 * v3 + v4),
            from.speed + seconds / 6 * (a1 + 2 * a2 + 2 * a3 + a4)};
}

} // namespace

std::optional<double> terminalSpeed(const FallingBody &body, DragCurve drag)
{
    if (!isAmount(body.drivingN) || !isAmount(body.inertiaKg) || !isAmount(body.acrossM))
        return std::nullopt;
    double slow = 0;
    double fast = mostReynolds * airViscosity / (airDensity * body.acrossM);
    if (dragAt(body, fast, drag) < body.drivingN)
        return std::nullopt;
    for (int halving = 0; halving < 100; ++halving) {
        const double middle = (slow + fast) / 2;
        (dragAt(body, middle, drag) < body.drivingN ? slow : fast) = middle;
    }
    return fast;
}

std::optional<double> secondsToFall(const FallingBody &body, double dropM, DragCurve drag)
{
    const auto terminal = terminalSpeed(body, drag);
    if (!terminal || !isAmount(dropM))
        return std::nullopt;
    const double step = body.inertiaKg * *terminal / body.drivingN / stepsToSettle;
    Motion motion;
    for (int steps = 0; steps < mostSteps; ++steps) {
        const Motion next = stepped(body, motion, step, drag);
        // Within one step the speed hardly changes: a straight line is near enough.
        if (next.fallen >= dropM)
            return step * (steps + (dropM - motion.fallen) / (next.fallen - motion.fallen));
        motion = next;
    }
    return std::nullopt;
}

} // namespace lidlark::grading
