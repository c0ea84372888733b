#pragma once

#include "core/base/result.h"
#include "core/grading/falling_body.h"
#include "core/grading/refusal.h"

namespace lidlark::grading {

/// A round party balloon filled with air of the room by a hand pump.
struct Balloon {
    double acrossMm = 250; ///< Width where it is widest.
    /// The skin; it grows no heavier when more air goes in. Source: a printer's table, "10,5 Zoll"
    /// balloon, 27 to 30 cm wide: 2.7 g (lauxdruck.de, latex-luftballon-g105, read). Others give
    /// 1.8 g for one of 25 cm: a thinner skin takes about a sixth longer.
    double envelopeGrams = 2.7;
    /// Pressure above that of the room. Source: about 35 hPa in a filled balloon, at most 50 hPa
    /// while it is small (measured with a sensor inside; phyphox.org forum, thread 1490, read).
    double overpressurePa = 3500;
};

/// Below 150 mm such a balloon is a hard knob of rubber, above 300 mm larger than it is made for.
inline constexpr Span balloonSpanMm{150, 300};
inline constexpr Span envelopeSpanGrams{1, 6};
inline constexpr Span overpressureSpanPa{0, 10'000};
inline constexpr Span dropSpanMm{100, 3000};

/// What the balloon is while it sinks. With V the volume of a ball of its width:
///
///     driving force = (envelope + density V overpressure / air pressure) * free fall
///     inertia       = envelope + density V (1 + overpressure / air pressure) + density V / 2
///
/// The air inside would float but for its being slightly compressed. Half the displaced air is
/// dragged along. Source of the half: H. Lamb, Hydrodynamics, 6th ed. (1932), section 92; G. K.
/// Batchelor, An Introduction to Fluid Dynamics (1967), section 6.8 (both from memory; that it
/// holds for balls in air was measured: J. Pantaleone and J. Messer, "The added mass of a spherical
/// projectile", abstract read).
/// @returns ErrorCode::Invalid, "across_mm: ...", for sizes outside the spans above.
Result<FallingBody> sinking(const Balloon &balloon);

/// How long the balloon stays in the air when it is let go @p dropMm above where it lands: the
/// longer, the more time to get there. @returns seconds, or "drop_mm: ...", "across_mm: ...".
Result<double> balloonFallSeconds(const Balloon &balloon, double dropMm);

/// How many times as fast the same soft push sends a balloon of @p smallerMm as one of @p acrossMm
/// along the floor: speed = push / (inertia + what turns with it). The skin turns as a hollow ball,
/// 2/3 of its mass at the rim; the air inside is left behind in a short push.
/// @returns 1 or more, or "than_across_mm: ..." when it is the larger one.
Result<double> balloonPushRatio(double acrossMm, double smallerMm);

} // namespace lidlark::grading
