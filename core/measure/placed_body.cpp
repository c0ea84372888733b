#include "core/measure/placed_body.h"

#include "core/measure/ellipse.h"

namespace lidlark::measure {

void PlacedBody::place(double scale, Vector3 turn, Vector3 shift)
{
    m_scale = scale;
    m_turnedX = m_x + cross(m_x, turn);
    m_turnedY = m_y + cross(m_y, turn);
    m_turnedZ = m_z + cross(m_z, turn);
    m_shift = shift;
}

Vector3 PlacedBody::furthestOut() const
{
    const Vector3 half = m_scale * m_body.half();
    const Vector3 middle{m_shift.x, m_shift.y, 0};
    Vector3 out;
    if (m_body.shape() == Shape::Box) {
        out = toCorner();
    } else if (m_body.shape() == Shape::Cylinder) {
        // The outline of either end.
        const Ellipse ellipse({half.x * m_turnedX.x, half.x * m_turnedX.y, 0},
                              {half.x * m_turnedY.x, half.x * m_turnedY.y, 0});
        const Vector3 axis{half.z * m_turnedX.z, half.z * m_turnedY.z, 0};
        out = ellipse.furthestFrom(middle + axis);
        const Vector3 other = ellipse.furthestFrom(middle - axis);
        if (dot(other, other) > dot(out, out))
            out = other;
    } else {
        const auto stretched = [&half](Vector3 v) {
            return Vector3{half.x * v.x, half.y * v.y, half.z * v.z};
        };
        out = Ellipse(stretched(m_turnedX), stretched(m_turnedY)).furthestFrom(middle);
    }
    const double distance = length(out);
    return distance > 0 ? (1 / distance) * out : Vector3{1, 0, 0};
}

Vector3 PlacedBody::toCorner() const
{
    const Vector3 half = m_scale * m_body.half();
    const Vector3 alongX{half.x * m_turnedX.x, half.x * m_turnedY.x, 0};
    const Vector3 alongY{half.y * m_turnedX.y, half.y * m_turnedY.y, 0};
    const Vector3 alongZ{half.z * m_turnedX.z, half.z * m_turnedY.z, 0};
    Vector3 out;
    double furthest = -1;
    for (const double x : {-1.0, 1.0}) {
        for (const double y : {-1.0, 1.0}) {
            Vector3 corner = alongZ + x * alongX + y * alongY;
            // Of two corners across from each other the one on the shift's side.
            const double side = corner.x * m_shift.x + corner.y * m_shift.y;
            corner = std::copysign(1.0, side) * corner + Vector3{m_shift.x, m_shift.y, 0};
            const double distance = dot(corner, corner);
            if (distance > furthest) {
                furthest = distance;
                out = corner;
            }
        }
    }
    return out;
}

} // namespace lidlark::measure
