#pragma once

#include "core/measure/vector3.h"

#include <array>

namespace lidlark::measure {

/// A quaternion: its real part and the parts of i, j, k.
using Quaternion = std::array<double, 4>;

/// How a body lies: spun about its own z axis, then tilted about a level line. As quaternions, of
/// any length: (1 + tiltX i + tiltY j)(1 + spin k). Each part is the tangent of half an angle.
struct Orientation {
    double tiltX = 0;
    double tiltY = 0;
    double spin = 0;

    [[nodiscard]] Turn turn() const
    {
        const double square = 1 + tiltX * tiltX + tiltY * tiltY;
        const double down = 2 / square;
        const Vector3 tiltedX{1 - down * tiltY * tiltY, down * tiltX * tiltY, -down * tiltY};
        const Vector3 tiltedY{down * tiltX * tiltY, 1 - down * tiltX * tiltX, down * tiltX};
        const double cosine = (1 - spin * spin) / (1 + spin * spin);
        const double sine = 2 * spin / (1 + spin * spin);
        return {cosine * tiltedX + sine * tiltedY,
                cosine * tiltedY - sine * tiltedX,
                {down * tiltY, -down * tiltX, down - 1}};
    }

    /// By which vector the body turns, in its own frame, radians for each unit of tiltX, of tiltY
    /// and of spin.
    [[nodiscard]] std::array<Vector3, 3> rates() const
    {
        const double tilting = 2 / (1 + tiltX * tiltX + tiltY * tiltY);
        const double spinning = 2 / (1 + spin * spin);
        const double cosine = spinning - 1;
        const double sine = spinning * spin;
        return {{{tilting * cosine, -tilting * sine, tilting * tiltY},
                 {tilting * sine, tilting * cosine, -tilting * tiltX},
                 {0, 0, spinning}}};
    }
};

/// The orientations whose tilts differ from the middle's by at most `tilt`, their spin by `spin`.
struct OrientationCell {
    Orientation middle;
    double tilt = 0;
    double spin = 0;
};

} // namespace lidlark::measure
