#pragma once

#include "core/measure/convex_body.h"
#include "core/measure/orientation.h"

namespace lidlark::measure {

/// Pressures of the walls on balls inside a body that balance as forces. However the middle is
/// shifted, at least one of those walls is then cut at least by the mean over the balls of
///     scale (radius + normal . turned middle of the ball) - wall,
/// weighted by the pressures. As normal . turned middle is a quadratic form of the quaternion, this
/// can be bounded over a whole cell of orientations, and nothing is left to a first order.
class Balance
{
public:
    /// @p outward the wall's outward normal, length 1. @p wallMm its distance from the origin.
    /// @p ball at scale 1.
    void press(double pressure, Vector3 outward, double wallMm, const Ball &ball);

    /// Whether in no orientation of @p cell the body at @p scale lies inside the walls.
    [[nodiscard]] bool forbids(const OrientationCell &cell, double scale) const;

    /// How much of what keeps it from forbidding @p cell is due to the tilt's width and to the
    /// spin's. Comparable with each other alone.
    struct Blur {
        double byTilt = 0;
        double bySpin = 0;
    };
    [[nodiscard]] Blur blur(const OrientationCell &cell, double scale) const;

private:
    /// The cut times the quaternion's square, as a polynomial of the way from a cell's middle:
    /// tiltX and tiltY to the second degree, each coefficient one of spin to the second degree.
    struct Polynomial;
    [[nodiscard]] Polynomial about(const Orientation &middle, double scale) const;
    [[nodiscard]] Quaternion pressed(const Quaternion &by, double scale) const;

    double m_along = 0; ///< Mean of normal . ball.
    Vector3 m_moment;   ///< Mean of ball x normal.
    std::array<double, 6>
        m_product{}; ///< Mean of 2 ball normal, made symmetric: xx, yy, zz, xy, xz, yz.
    double m_radius = 0;
    double m_wall = 0;
};

} // namespace lidlark::measure
