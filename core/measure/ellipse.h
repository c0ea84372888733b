#pragma once

#include "core/measure/vector3.h"

namespace lidlark::measure {

/// An ellipse in the plane z = 0, as the shadow of a ball that was stretched.
class Ellipse
{
public:
    /// It reaches as far along x, y and all between as the vectors @p alongX, @p alongY and those
    /// between are long.
    Ellipse(Vector3 alongX, Vector3 alongY);

    /// The point furthest from the origin when the ellipse lies about @p middle (z = 0).
    [[nodiscard]] Vector3 furthestFrom(Vector3 middle) const;

private:
    Vector3 m_axis; ///< Of the longer half axis; length 1.
    double m_longer;
    double m_shorter;
};

} // namespace lidlark::measure
