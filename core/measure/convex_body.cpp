#include "core/measure/convex_body.h"

#include <algorithm>

namespace lidlark::measure {

ConvexBody::ConvexBody(const Solid &solid) : m_shape(solid.shape())
{
    std::array<double, 3> sizes = solid.sizes();
    if (m_shape != Shape::Cylinder)
        std::ranges::sort(sizes);
    if (m_shape == Shape::Ellipsoid && sizes[1] == sizes[2])
        std::swap(sizes[0], sizes[2]); // a lentil: its own axis becomes z
    m_half = {sizes[0] / 2, sizes[1] / 2, sizes[2] / 2};
}

Vector3 ConvexBody::furthest(Vector3 direction) const
{
    switch (m_shape) {
    case Shape::Box:
        return {std::copysign(m_half.x, direction.x), std::copysign(m_half.y, direction.y),
                std::copysign(m_half.z, direction.z)};
    case Shape::Cylinder: {
        const double across = std::hypot(direction.x, direction.y);
        const double reach = across > 0 ? m_half.x / across : 0;
        return {reach * direction.x, reach * direction.y, std::copysign(m_half.z, direction.z)};
    }
    default: {
        const Vector3 stretched{m_half.x * direction.x, m_half.y * direction.y,
                                m_half.z * direction.z};
        const double reach = 1 / length(stretched);
        return {reach * m_half.x * stretched.x, reach * m_half.y * stretched.y,
                reach * m_half.z * stretched.z};
    }
    }
}

} // namespace lidlark::measure
