#pragma once

#include "core/measure/solid.h"

#include <array>
#include <cmath>
#include <cstddef>
#include <numbers>
#include <vector>

/// Points on the surface of a solid that is turned any way: what the cylinder's oracle looks at.
namespace lidlark::measure::oracle {

using Vec = std::array<double, 3>;
/// Where the solid's own axes point. The cylinder's rim lies in z = 0, its deep side towards +x.
using Frame = std::array<Vec, 3>;

inline double dot(const Vec &a, const Vec &b)
{
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

/// Turns the frame about the direction of @p turn, by its length in radians (Rodrigues).
inline Frame turned(const Frame &frame, const Vec &turn)
{
    const double angle = std::sqrt(dot(turn, turn));
    if (angle < 1e-15)
        return frame;
    const Vec k{turn[0] / angle, turn[1] / angle, turn[2] / angle};
    Frame result{};
    for (std::size_t i = 0; i < 3; ++i) {
        const Vec &v = frame[i];
        const Vec cross{k[1] * v[2] - k[2] * v[1], k[2] * v[0] - k[0] * v[2],
                        k[0] * v[1] - k[1] * v[0]};
        const double along = dot(k, v) * (1 - std::cos(angle));
        for (std::size_t j = 0; j < 3; ++j)
            result[i][j] = v[j] * std::cos(angle) + cross[j] * std::sin(angle) + k[j] * along;
    }
    return result;
}

/// The point of the ellipsoid with half axes @p half at which @p outward is normal to the surface.
inline Vec ellipsoidPoint(const Frame &frame, const Vec &half, const Vec &outward)
{
    Vec point{};
    double length = 0;
    for (std::size_t i = 0; i < 3; ++i) {
        const double part = half[i] * dot(frame[i], outward);
        length += part * part;
        for (std::size_t j = 0; j < 3; ++j)
            point[j] += half[i] * part * frame[i][j];
    }
    for (double &coordinate : point)
        coordinate /= std::sqrt(length);
    return point;
}

/// Surface points about the solid's middle among which are, but for the gaps between them, all that
/// can touch the cylinder: corners; both rims; the outline seen from above, the top and the point
/// that goes deepest into the slant. @param count points on each curve.
inline std::vector<Vec> surface(const Solid &solid, const Frame &frame, std::size_t count)
{
    const Vec half{solid.sizes()[0] / 2, solid.sizes()[1] / 2, solid.sizes()[2] / 2};
    std::vector<Vec> points;
    const auto add = [&](double a, double b, double c) {
        Vec point{};
        for (std::size_t j = 0; j < 3; ++j)
            point[j] = a * frame[0][j] + b * frame[1][j] + c * frame[2][j];
        points.push_back(point);
    };
    if (solid.shape() == Shape::Box) {
        for (unsigned corner = 0; corner < 8; ++corner)
            add((corner & 1U) != 0 ? half[0] : -half[0], (corner & 2U) != 0 ? half[1] : -half[1],
                (corner & 4U) != 0 ? half[2] : -half[2]);
        return points;
    }
    for (std::size_t i = 0; i < count; ++i) {
        const double angle =
            2 * std::numbers::pi * static_cast<double>(i) / static_cast<double>(count);
        const double c = std::cos(angle);
        const double s = std::sin(angle);
        if (solid.shape() == Shape::Cylinder) {
            add(half[0] * c, half[0] * s, half[2]);
            add(half[0] * c, half[0] * s, -half[2]);
        } else {
            points.push_back(ellipsoidPoint(frame, half, {c, s, 0}));
        }
    }
    if (solid.shape() != Shape::Cylinder) {
        points.push_back(ellipsoidPoint(frame, half, {0, 0, 1}));
        points.push_back(ellipsoidPoint(frame, half, {-1, 0, -1}));
    }
    return points;
}

} // namespace lidlark::measure::oracle
