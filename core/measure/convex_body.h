#pragma once

#include "core/measure/solid.h"
#include "core/measure/vector3.h"

namespace lidlark::measure {

/// A solid about its middle, by what touches a wall first. Box and ellipsoid stand on their longest
/// size (z), with the shortest along x; a cylinder stands on its disc, and a lentil lies flat.
class ConvexBody
{
public:
    explicit ConvexBody(const Solid &solid);

    /// The point of the body that lies furthest in @p direction (not zero), in the body's frame,
    /// mm.
    [[nodiscard]] Vector3 furthest(Vector3 direction) const;

    [[nodiscard]] Shape shape() const { return m_shape; }
    /// Half sizes, mm: along x, y, z.
    [[nodiscard]] Vector3 half() const { return m_half; }
    /// Spinning about z changes nothing.
    [[nodiscard]] bool isRound() const
    {
        return m_shape == Shape::Cylinder || (m_shape == Shape::Ellipsoid && m_half.x == m_half.y);
    }

private:
    Shape m_shape;
    Vector3 m_half;
};

} // namespace lidlark::measure
