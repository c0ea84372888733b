#include "core/drawing/arc.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace lidlark::drawing {

namespace {

constexpr double pi = std::numbers::pi;

/// An ellipse and the part of it that is drawn, angles in radians.
struct Centred {
    Point centre;
    Point radii;
    double turn = 0;
    double start = 0;
    double swept = 0;

    [[nodiscard]] Point turned(Point p) const
    {
        return {std::cos(turn) * p.x - std::sin(turn) * p.y,
                std::sin(turn) * p.x + std::cos(turn) * p.y};
    }
    [[nodiscard]] Point at(double angle) const
    {
        const Point p = turned({radii.x * std::cos(angle), radii.y * std::sin(angle)});
        return {p.x + centre.x, p.y + centre.y};
    }
    [[nodiscard]] Point direction(double angle) const
    {
        return turned({-radii.x * std::sin(angle), radii.y * std::cos(angle)});
    }
};

double sweptBy(const Arc &arc, double start, double end)
{
    double swept = end - start;
    if (arc.sweep && swept < 0)
        swept += 2 * pi;
    if (!arc.sweep && swept > 0)
        swept -= 2 * pi;
    return swept;
}

/// SVG 1.1, F.6.5 and F.6.6; the names of the steps are theirs.
Centred centred(const Arc &arc)
{
    Centred found;
    found.turn = arc.turnDegrees * pi / 180;
    found.radii = {std::abs(arc.radii.x), std::abs(arc.radii.y)};
    const Point half{(arc.from.x - arc.to.x) / 2, (arc.from.y - arc.to.y) / 2};
    const Point prime{std::cos(found.turn) * half.x + std::sin(found.turn) * half.y,
                      -std::sin(found.turn) * half.x + std::cos(found.turn) * half.y};
    const double lambda =
        std::pow(prime.x / found.radii.x, 2) + std::pow(prime.y / found.radii.y, 2);
    const double grown = std::sqrt(std::max(lambda, 1.0));
    found.radii = {found.radii.x * grown, found.radii.y * grown};
    const double xx = std::pow(found.radii.x * prime.y, 2);
    const double yy = std::pow(found.radii.y * prime.x, 2);
    const double rest = std::max(0.0, std::pow(found.radii.x * found.radii.y, 2) - xx - yy);
    const double factor = std::sqrt(rest / (xx + yy)) * (arc.large == arc.sweep ? -1 : 1);
    const Point centre{factor * found.radii.x * prime.y / found.radii.y,
                       -factor * found.radii.y * prime.x / found.radii.x};
    const Point moved = found.turned(centre);
    found.centre = {moved.x + (arc.from.x + arc.to.x) / 2, moved.y + (arc.from.y + arc.to.y) / 2};
    const auto angle = [&found](double x, double y) {
        return std::atan2(y / found.radii.y, x / found.radii.x);
    };
    found.start = angle(prime.x - centre.x, prime.y - centre.y);
    found.swept = sweptBy(arc, found.start, angle(-prime.x - centre.x, -prime.y - centre.y));
    return found;
}

} // namespace

std::vector<Cubic> cubicsOf(const Arc &arc)
{
    if (arc.from == arc.to)
        return {};
    if (arc.radii.x == 0 || arc.radii.y == 0)
        return {{arc.from, arc.to, arc.to}};
    const Centred ellipse = centred(arc);
    constexpr double roundingSlack = 1e-9;
    const int pieces = std::max(
        1, static_cast<int>(std::ceil(std::abs(ellipse.swept) / (pi / 2) - roundingSlack)));
    const double step = ellipse.swept / pieces;
    const double reach = 4.0 / 3 * std::tan(step / 4);
    std::vector<Cubic> cubics;
    cubics.reserve(static_cast<std::size_t>(pieces));
    for (int i = 0; i < pieces; ++i) {
        const double from = ellipse.start + i * step;
        const double to = from + step;
        const Point a = ellipse.at(from);
        const Point b = ellipse.at(to);
        const Point out = ellipse.direction(from);
        const Point in = ellipse.direction(to);
        cubics.push_back({Point{a.x + reach * out.x, a.y + reach * out.y},
                          Point{b.x - reach * in.x, b.y - reach * in.y}, b});
    }
    return cubics;
}

} // namespace lidlark::drawing
