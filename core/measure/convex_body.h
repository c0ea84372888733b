#pragma once

#include "core/measure/solid.h"
#include "core/measure/vector3.h"

namespace lidlark::measure {

/// A ball inside a body, in the body's frame, mm. A corner is a ball of radius 0.
struct Ball {
    Vector3 middle;
    double radius = 0;
};

/// A solid about its middle, by what touches a wall first. Box and ellipsoid stand on their longest
/// size (z), with the shortest along x; a cylinder stands on its disc, and a lentil lies flat.
class ConvexBody
{
public:
    explicit ConvexBody(const Solid &solid);

    /// A ball inside the body that reaches as far in @p direction (not zero, of any length) as the
    /// body does. For an ellipsoid a large one, which changes little when it turns.
    [[nodiscard]] Ball furthest(Vector3 direction) const;

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
    Vector3 m_squares;   ///< Ellipsoid: of the half sizes, each without the shortest's.
    double m_square = 0; ///< The shortest's.
};

} // namespace lidlark::measure
