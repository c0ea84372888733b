#pragma once

#include "core/drawing/affine.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lidlark::drawing {

/// A piece of a path in absolute numbers: M and L have one point, Q two, C three, Z none.
struct Segment {
    char command = 'M';
    std::vector<Point> points;
    bool operator==(const Segment &) const = default;
};
using Path = std::vector<Segment>;

/// px from the origin, many times the area of any drawing.
inline constexpr double farthest = 10'000;

/// Reads SVG path data (SVG 1.1, section 8.3), every command of it, relative ones and arcs too.
/// @returns nothing for what is no path, does not begin with a move, or goes beyond `farthest`.
[[nodiscard]] std::optional<Path> readPath(std::string_view svg);

[[nodiscard]] Path moved(const Path &path, const Affine &map);

/// As path data with one decimal, the finest that shows at the sizes we draw.
[[nodiscard]] std::string svgText(const Path &path);

[[nodiscard]] Path circle(Point centre, double radius);
[[nodiscard]] Path ellipse(Point centre, Point radii);
/// @param corner radius of its corners, 0 for sharp ones.
[[nodiscard]] Path box(Point topLeft, Point size, double corner);
/// An open line through the points.
[[nodiscard]] Path lineThrough(const std::vector<Point> &points);

} // namespace lidlark::drawing
