#include "core/measure/ellipse.h"

#include <algorithm>

namespace lidlark::measure {

Ellipse::Ellipse(Vector3 alongX, Vector3 alongY)
{
    // The matrix (xx, xy; xy, yy) and its eigenvalues, the squares of the half axes.
    const double xx = dot(alongX, alongX);
    const double yy = dot(alongY, alongY);
    const double xy = dot(alongX, alongY);
    const double apart = (xx - yy) / 2;
    const double spread = std::sqrt(apart * apart + xy * xy);
    // Of two ways to write the axis the one that loses no digits.
    m_axis = apart >= 0 ? Vector3{spread + apart, xy, 0} : Vector3{xy, spread - apart, 0};
    const double size = length(m_axis);
    m_axis = size > 0 ? (1 / size) * m_axis : Vector3{1, 0, 0};
    const double square = (xx + yy) / 2 + spread;
    m_longer = std::sqrt(square);
    m_shorter = square > 0 ? std::sqrt(std::max(0.0, xx * yy - xy * xy) / square) : 0;
}

Vector3 Ellipse::furthestFrom(Vector3 middle) const
{
    const Vector3 aside{-m_axis.y, m_axis.x, 0};
    const double ahead = dot(middle, m_axis);
    const double across = dot(middle, aside);
    // Mirrored at the axes into the quarter to the side of the middle, a point is no nearer. There,
    // with t the tangent of its angle, the distance is greatest at the only root of
    //     longer |ahead| t + (longer^2 - shorter^2) t / sqrt(1 + t^2) - shorter |across|,
    // which rises and bends down: Newton's steps come up to it from below.
    const double rise = m_longer * std::max(std::abs(ahead), 1e-9 * m_longer);
    const double bent = (m_longer - m_shorter) * (m_longer + m_shorter);
    const double height = m_shorter * std::abs(across);
    double tangent = rise > 0 ? std::max(height / (rise + bent), (height - bent) / rise) : 0;
    double cosine = 1;
    constexpr int steps = 20;
    for (int step = 0; step < steps; ++step) {
        cosine = 1 / std::sqrt(1 + tangent * tangent);
        const double lacking = height - (rise + bent * cosine) * tangent;
        const double further = lacking / (rise + bent * cosine * cosine * cosine);
        if (!(further > 1e-8 * (1 + tangent)))
            break;
        tangent += further;
    }
    const double along = std::abs(ahead) + m_longer * cosine;
    const double over = std::abs(across) + m_shorter * tangent * cosine;
    return std::copysign(along, ahead) * m_axis + std::copysign(over, across) * aside;
}

} // namespace lidlark::measure
