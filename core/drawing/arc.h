#pragma once

#include "core/drawing/affine.h"

#include <array>
#include <vector>

namespace lidlark::drawing {

/// An elliptical arc as SVG paths write it (SVG 1.1, section 8.3.8).
struct Arc {
    Point from;
    Point radii; ///< Made larger when the ends lie too far apart (SVG 1.1, F.6.6).
    double turnDegrees = 0;
    bool large = false;
    bool sweep = false;
    Point to;
};

/// Two control points and an end.
using Cubic = std::array<Point, 3>;

/// The arc as Bezier curves of at most a quarter turn each: what is left can be moved, turned and
/// stretched by its points alone. Follows SVG 1.1, appendix F.6.5 (centre from the ends).
/// @returns nothing for an arc that ends where it began; a straight line for a radius of 0.
[[nodiscard]] std::vector<Cubic> cubicsOf(const Arc &arc);

} // namespace lidlark::drawing
