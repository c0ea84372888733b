#include "core/grading/balloon.h"

#include "core/grading/air.h"
#include "core/grading/sphere_drag.h"

#include <numbers>

namespace lidlark::grading {

namespace {

constexpr double gramsToKg = 1e-3;
constexpr double mmToM = 1e-3;

/// Mass of the air that a ball of this width displaces, kg.
double displacedKg(double acrossMm)
{
    const double across = acrossMm * mmToM;
    return airDensity * std::numbers::pi / 6 * across * across * across;
}

} // namespace

Result<FallingBody> sinking(const Balloon &balloon)
{
    if (!balloonSpanMm.has(balloon.acrossMm))
        return refusal("across_mm", "a party balloon is 150 to 300 mm across");
    if (!envelopeSpanGrams.has(balloon.envelopeGrams))
        return refusal("envelope_grams", "the skin of a party balloon weighs 1 to 6 g");
    if (!overpressureSpanPa.has(balloon.overpressurePa))
        return refusal("overpressure_pa", "must be 0 to 10000");
    const double displaced = displacedKg(balloon.acrossMm);
    const double compressed = displaced * balloon.overpressurePa / airPressure;
    const double envelope = balloon.envelopeGrams * gramsToKg;
    FallingBody body;
    body.drivingN = (envelope + compressed) * freeFall;
    body.inertiaKg = envelope + displaced + compressed + displaced / 2;
    body.acrossM = balloon.acrossMm * mmToM;
    return body;
}

Result<double> balloonFallSeconds(const Balloon &balloon, double dropMm)
{
    if (!dropSpanMm.has(dropMm))
        return refusal("drop_mm", "must be 100 to 3000 mm");
    const Result<FallingBody> body = sinking(balloon);
    if (!body)
        return body.error();
    const auto seconds = secondsToFall(*body, dropMm * mmToM, sphereDrag);
    if (!seconds)
        return refusal("across_mm", "it falls faster than the formula knows");
    return *seconds;
}

Result<double> balloonPushRatio(double acrossMm, double smallerMm)
{
    const Result<FallingBody> larger = sinking({.acrossMm = acrossMm});
    if (!larger)
        return larger.error();
    const Balloon small{.acrossMm = smallerMm};
    const Result<FallingBody> smaller = sinking(small);
    if (!smaller || smallerMm > acrossMm)
        return refusal("than_across_mm", "must be 150 mm or more, and no more than across_mm");
    const double turning = 2.0 / 3 * small.envelopeGrams * gramsToKg;
    return (larger->inertiaKg + turning) / (smaller->inertiaKg + turning);
}

} // namespace lidlark::grading
