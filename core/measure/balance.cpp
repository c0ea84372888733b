#include "core/measure/balance.h"

#include <algorithm>

namespace lidlark::measure {

namespace {

double product(const Quaternion &a, const Quaternion &b)
{
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2] + a[3] * b[3];
}

/// The least of slope x + bend x^2 while |x| <= most.
double leastWithin(double slope, double bend, double most)
{
    const double steep = std::abs(slope);
    if (steep < 2 * bend * most)
        return -steep * steep / (4 * bend);
    return (bend * most - steep) * most;
}

} // namespace

void Balance::press(double pressure, Vector3 outward, double wallMm, const Ball &ball)
{
    const Vector3 pushed = pressure * outward;
    const Vector3 &at = ball.middle;
    m_along += dot(pushed, at);
    m_moment = m_moment + cross(at, pushed);
    m_product[0] += 2 * at.x * pushed.x;
    m_product[1] += 2 * at.y * pushed.y;
    m_product[2] += 2 * at.z * pushed.z;
    m_product[3] += at.x * pushed.y + at.y * pushed.x;
    m_product[4] += at.x * pushed.z + at.z * pushed.x;
    m_product[5] += at.y * pushed.z + at.z * pushed.y;
    m_radius += pressure * ball.radius;
    m_wall += pressure * wallMm;
}

/// With q = (w, v): q* normal . turned ball = (w^2 - v^2) along + 2 (v normal) (v ball) + 2 w v
/// (ball x normal).
Quaternion Balance::pressed(const Quaternion &by, double scale) const
{
    const double fixed = scale * m_radius - m_wall;
    const double real = scale * m_along + fixed;
    const double rest = fixed - scale * m_along;
    const auto &[xx, yy, zz, xy, xz, yz] = m_product;
    return {real * by[0] + scale * (m_moment.x * by[1] + m_moment.y * by[2] + m_moment.z * by[3]),
            rest * by[1] + scale * (m_moment.x * by[0] + xx * by[1] + xy * by[2] + xz * by[3]),
            rest * by[2] + scale * (m_moment.y * by[0] + xy * by[1] + yy * by[2] + yz * by[3]),
            rest * by[3] + scale * (m_moment.z * by[0] + xz * by[1] + yz * by[2] + zz * by[3])};
}

struct Balance::Polynomial {
    double middle;
    double x, y, s;
    double xx, yy, ss, xy, xs, ys;
    double xxs, xys, yys, xss, yss;
    double xxss, yyss, xyss;
};

Balance::Polynomial Balance::about(const Orientation &middle, double scale) const
{
    const auto [x, y, s] = middle;
    const Quaternion whole{1, x + y * s, y - x * s, s};
    const Quaternion byX{0, 1, -s, 0};
    const Quaternion byY{0, s, 1, 0};
    const Quaternion byS{0, y, -x, 1};
    const Quaternion byXS{0, 0, -1, 0};
    const Quaternion byYS{0, 1, 0, 0};
    const Quaternion atWhole = pressed(whole, scale);
    const Quaternion atX = pressed(byX, scale);
    const Quaternion atY = pressed(byY, scale);
    const Quaternion atS = pressed(byS, scale);
    const Quaternion atXS = pressed(byXS, scale);
    const Quaternion atYS = pressed(byYS, scale);
    return {product(atWhole, whole),
            2 * product(atWhole, byX),
            2 * product(atWhole, byY),
            2 * product(atWhole, byS),
            product(atX, byX),
            product(atY, byY),
            product(atS, byS),
            2 * product(atX, byY),
            2 * (product(atWhole, byXS) + product(atX, byS)),
            2 * (product(atWhole, byYS) + product(atY, byS)),
            2 * product(atX, byXS),
            2 * (product(atX, byYS) + product(atY, byXS)),
            2 * product(atY, byYS),
            2 * product(atS, byXS),
            2 * product(atS, byYS),
            product(atXS, byXS),
            product(atYS, byYS),
            2 * product(atXS, byYS)};
}

bool Balance::forbids(const OrientationCell &cell, double scale) const
{
    const Polynomial p = about(cell.middle, scale);
    const double t = cell.tilt;
    const double s = cell.spin;
    if (!(p.middle > 0))
        return false;
    const double apart = leastWithin(p.x, p.xx, t) + leastWithin(p.y, p.yy, t) +
                         leastWithin(p.s, p.ss, s) - std::abs(p.xy) * t * t;
    if (s == 0)
        return p.middle + apart > 0;
    const double together =
        t * s *
        (std::abs(p.xs) + std::abs(p.ys) +
         t * (std::abs(p.xxs) + std::abs(p.xys) + std::abs(p.yys)) +
         s * (std::abs(p.xss) + std::abs(p.yss) +
              t * (std::max(0.0, -p.xxss) + std::max(0.0, -p.yyss) + std::abs(p.xyss))));
    return p.middle + apart - together > 0;
}

Balance::Blur Balance::blur(const OrientationCell &cell, double scale) const
{
    const Polynomial p = about(cell.middle, scale);
    const double t = cell.tilt;
    const double s = cell.spin;
    const double mixed = t * s * (std::abs(p.xs) + std::abs(p.ys));
    return {t * t * (std::abs(p.xx) + std::abs(p.yy) + std::abs(p.xy)) + mixed,
            s * s * std::abs(p.ss) + mixed};
}

} // namespace lidlark::measure
