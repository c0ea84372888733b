#include "core/measure/convex_body.h"

#include <algorithm>

namespace lidlark::measure {

ConvexBody::ConvexBody(const Solid &solid) : m_shape(solid.shape())
{
    std::array<double, 3> sizes = solid.sizes();
    if (m_shape != Shape::Cylinder)
        std::ranges::sort(sizes);
    const double shortest = sizes[0] / 2;
    if (m_shape == Shape::Ellipsoid && sizes[1] == sizes[2])
        std::swap(sizes[0], sizes[2]); // a lentil: its own axis becomes z
    m_half = {sizes[0] / 2, sizes[1] / 2, sizes[2] / 2};
    const auto above = [shortest](double half) { return (half - shortest) * (half + shortest); };
    m_squares = {above(m_half.x), above(m_half.y), above(m_half.z)};
    m_square = shortest * shortest;
}

/// An ellipsoid reaches h(u) = sqrt(c^2 + sum of (a_i^2 - c^2) u_i^2) along a unit vector u, with c
/// its shortest half size. That is the length of a vector, at least its product with any of length
/// 1: the ball of radius c^2 / h(d) about (a_i^2 - c^2) d_i / h(d) reaches no further along any u,
/// and as far along u = d.
Ball ConvexBody::furthest(Vector3 direction) const
{
    switch (m_shape) {
    case Shape::Box:
        return {{std::copysign(m_half.x, direction.x), std::copysign(m_half.y, direction.y),
                 std::copysign(m_half.z, direction.z)},
                0};
    case Shape::Cylinder: {
        const double across = direction.x * direction.x + direction.y * direction.y;
        const double reach = across > 0 ? m_half.x / std::sqrt(across) : 0;
        return {{reach * direction.x, reach * direction.y, std::copysign(m_half.z, direction.z)},
                0};
    }
    default: {
        const Vector3 middle{m_squares.x * direction.x, m_squares.y * direction.y,
                             m_squares.z * direction.z};
        const double square = dot(direction, direction);
        const double reach = std::sqrt(m_square * square + dot(middle, direction));
        return {(1 / reach) * middle, m_square * std::sqrt(square) / reach};
    }
    }
}

} // namespace lidlark::measure
