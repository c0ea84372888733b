#pragma once

#include "tests/core/measure/solid_points.h"

#include <algorithm>

/// The small parts cylinder as the oracle sees it: walls that points are inside of or not.
namespace lidlark::measure::oracle {

// 16 CFR 1501.4 figure 1, copied here so that a slip in the core's own figures is seen: diameter
// 1.25 in, depth 1.00 in (from memory) and 2.25 in, millimetres at 25.4 to the inch.
inline constexpr double bore = 1.25 * 25.4 / 2;
inline constexpr double meanDepth = (1.00 + 2.25) / 2 * 25.4;

struct Reach {
    double top = 0;   ///< Highest point above the middle.
    double slant = 0; ///< Most that -x-z comes to: how far the shallow side pushes back.
    double aside = 0; ///< Furthest from the upright line through the middle.
};

inline Reach reachOf(const std::vector<Vec> &points)
{
    Reach reach;
    for (const Vec &p : points) {
        reach.top = std::max(reach.top, p[2]);
        reach.slant = std::max(reach.slant, -p[0] - p[2]);
        reach.aside = std::max(reach.aside, std::hypot(p[0], p[1]));
    }
    return reach;
}

struct Place {
    bool found = false;
    Vec middle{};
};

/// Hangs the scaled solid from the rim, moves it away from the shallow side only as far as the
/// slant asks (all these solids look the same from both sides of their middle, so further is
/// never better), and intersects what each point leaves of the way from side to side.
inline Place placeOf(const std::vector<Vec> &points, const Reach &reach, double scale)
{
    const double x = std::max(0.0, scale * (reach.top + reach.slant) - meanDepth);
    double least = -bore;
    double most = bore;
    for (const Vec &p : points) {
        const double across = scale * p[0] + x;
        const double square = bore * bore - across * across;
        if (square < 0)
            return {};
        const double room = std::sqrt(square);
        least = std::max(least, -room - scale * p[1]);
        most = std::min(most, room - scale * p[1]);
    }
    if (least > most)
        return {};
    return {true, {x, (least + most) / 2, -scale * reach.top}};
}

/// The largest scale in one orientation, and where the middle lies then.
inline double scaleIn(const std::vector<Vec> &points, Place *place = nullptr)
{
    const Reach reach = reachOf(points);
    double most = std::min(bore / reach.aside, (meanDepth + bore) / (reach.top + reach.slant));
    double least = 0;
    for (int step = 0; step < 25; ++step) {
        const double middle = (least + most) / 2;
        (placeOf(points, reach, middle).found ? least : most) = middle;
    }
    if (place != nullptr)
        *place = placeOf(points, reach, least);
    return least;
}

/// The last word on a pose, from the cylinder's definition alone: the scale at which the first
/// point, drawn outwards from @p middle, meets the rim's plane, the slant or the wall.
inline double scaleAt(const std::vector<Vec> &points, const Vec &middle)
{
    double scale = 1e9;
    const auto wall = [&](double reach, double room) {
        if (reach > 0)
            scale = std::min(scale, room / reach);
    };
    for (const Vec &p : points) {
        wall(p[2], -middle[2]);
        wall(-p[0] - p[2], meanDepth + middle[0] + middle[2]);
        const double a = p[0] * p[0] + p[1] * p[1];
        const double b = p[0] * middle[0] + p[1] * middle[1];
        const double c = middle[0] * middle[0] + middle[1] * middle[1] - bore * bore;
        wall(a, -b + std::sqrt(b * b - a * c));
    }
    return scale;
}

} // namespace lidlark::measure::oracle
