#include "core/drawing/affine.h"

#include <cmath>
#include <numbers>

namespace lidlark::drawing {

Affine operator*(const Affine &outer, const Affine &inner)
{
    const Point across{outer.a * inner.a + outer.c * inner.b,
                       outer.b * inner.a + outer.d * inner.b};
    const Point down{outer.a * inner.c + outer.c * inner.d, outer.b * inner.c + outer.d * inner.d};
    const Point origin = outer({inner.e, inner.f});
    return {across.x, across.y, down.x, down.y, origin.x, origin.y};
}

Affine shiftedBy(double x, double y)
{
    return {1, 0, 0, 1, x, y};
}

Affine affineOf(const Placement &placement)
{
    const double turn = placement.turnDegrees * std::numbers::pi / 180;
    const double across = placement.flip ? -placement.size.x : placement.size.x;
    const double down = placement.size.y;
    Affine map{std::cos(turn) * across,
               std::sin(turn) * across,
               -std::sin(turn) * down,
               std::cos(turn) * down,
               0,
               0};
    const Point anchor = map(placement.anchor);
    map.e = placement.at.x - anchor.x;
    map.f = placement.at.y - anchor.y;
    return map;
}

} // namespace lidlark::drawing
