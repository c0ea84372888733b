#pragma once

#include "core/measure/convex_body.h"

namespace lidlark::measure {

/// A body at a scale, turned on from an orientation to first order, and shifted.
class PlacedBody
{
public:
    PlacedBody(const ConvexBody &body, const Turn &about)
        : m_body(body), m_x{about.ex.x, about.ey.x, about.ez.x},
          m_y{about.ex.y, about.ey.y, about.ez.y}, m_z{about.ex.z, about.ey.z, about.ez.z},
          m_turnedX(m_x), m_turnedY(m_y), m_turnedZ(m_z)
    {
    }

    /// @p turn from the orientation that it began with, radians, in the body's frame.
    void place(double scale, Vector3 turn, Vector3 shift);

    /// The world's @p direction in the body's frame, before the turn.
    [[nodiscard]] Vector3 inBody(Vector3 direction) const
    {
        return direction.x * m_x + direction.y * m_y + direction.z * m_z;
    }
    /// What of the body, as it is turned now, reaches furthest along the world's @p direction.
    [[nodiscard]] Ball reaching(Vector3 direction) const
    {
        // To first order, (x + turn cross x) . u = x . (u + u cross turn).
        return m_body.furthest(direction.x * m_turnedX + direction.y * m_turnedY +
                               direction.z * m_turnedZ);
    }

    /// The level direction, of length 1, in which the body reaches furthest from the axis.
    [[nodiscard]] Vector3 furthestOut() const;

private:
    [[nodiscard]] Vector3 toCorner() const;

    const ConvexBody &m_body;
    Vector3 m_x; ///< The world's axes in the body's frame,
    Vector3 m_y;
    Vector3 m_z;
    Vector3 m_turnedX; ///< and with the turn.
    Vector3 m_turnedY;
    Vector3 m_turnedZ;
    double m_scale = 0;
    Vector3 m_shift;
};

} // namespace lidlark::measure
