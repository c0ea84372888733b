#include "core/drawing/path.h"

#include "core/drawing/arc.h"

#include <array>
#include <cmath>
#include <cstdio>

namespace lidlark::drawing {

namespace {

std::string written(double number)
{
    std::array<char, 320> text{}; // the largest double has 309 digits before its point
    const double tenths = std::round(number * 10) / 10;
    // Adding 0 turns -0 into 0.
    const int length = std::snprintf(text.data(), text.size(), "%.1f", tenths + 0.0);
    std::string shortest(text.data(), static_cast<std::size_t>(length));
    if (shortest.ends_with(".0"))
        shortest.resize(shortest.size() - 2);
    return shortest;
}

} // namespace

Path moved(const Path &path, const Affine &map)
{
    Path result = path;
    for (Segment &segment : result) {
        for (Point &point : segment.points)
            point = map(point);
    }
    return result;
}

std::string svgText(const Path &path)
{
    std::string text;
    for (const Segment &segment : path) {
        text += segment.command;
        for (std::size_t i = 0; i < segment.points.size(); ++i) {
            text += i == 0 ? "" : " ";
            text += written(segment.points[i].x) + " " + written(segment.points[i].y);
        }
    }
    return text;
}

Path circle(Point centre, double radius)
{
    return ellipse(centre, {radius, radius});
}

Path ellipse(Point centre, Point radii)
{
    const Point left{centre.x - radii.x, centre.y};
    const Point right{centre.x + radii.x, centre.y};
    Path path{{'M', {left}}};
    for (const Arc &half :
         {Arc{left, radii, 0, true, false, right}, Arc{right, radii, 0, true, false, left}}) {
        for (const Cubic &cubic : cubicsOf(half))
            path.push_back({'C', {cubic.begin(), cubic.end()}});
    }
    path.push_back({'Z', {}});
    return path;
}

Path box(Point topLeft, Point size, double corner)
{
    const double left = topLeft.x;
    const double top = topLeft.y;
    const double right = left + size.x;
    const double foot = top + size.y;
    return {{'M', {{left, top + corner}}},
            {'Q', {{left, top}, {left + corner, top}}},
            {'L', {{right - corner, top}}},
            {'Q', {{right, top}, {right, top + corner}}},
            {'L', {{right, foot - corner}}},
            {'Q', {{right, foot}, {right - corner, foot}}},
            {'L', {{left + corner, foot}}},
            {'Q', {{left, foot}, {left, foot - corner}}},
            {'Z', {}}};
}

Path lineThrough(const std::vector<Point> &points)
{
    Path path;
    path.reserve(points.size());
    for (const Point &point : points)
        path.push_back({path.empty() ? 'M' : 'L', {point}});
    return path;
}

} // namespace lidlark::drawing
