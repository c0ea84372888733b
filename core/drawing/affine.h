#pragma once

namespace lidlark::drawing {

/// A place on a drawing, in its own units (px of its viewBox); y runs down.
struct Point {
    double x = 0;
    double y = 0;
    bool operator==(const Point &) const = default;
};

/// The map x' = a x + c y + e, y' = b x + d y + f (the six numbers of SVG 1.1, section 7.4).
struct Affine {
    double a = 1;
    double b = 0;
    double c = 0;
    double d = 1;
    double e = 0;
    double f = 0;

    [[nodiscard]] Point operator()(Point p) const
    {
        return {a * p.x + c * p.y + e, b * p.x + d * p.y + f};
    }
};

/// First @p inner, then @p outer.
[[nodiscard]] Affine operator*(const Affine &outer, const Affine &inner);

[[nodiscard]] Affine shiftedBy(double x, double y);

/// How a part is laid on a drawing: its anchor lands on `at`; first flipped left to right, then
/// sized, then turned clockwise about the anchor.
struct Placement {
    Point at;
    double turnDegrees = 0;
    Point size{1, 1};
    bool flip = false;
    Point anchor;
};
[[nodiscard]] Affine affineOf(const Placement &placement);

} // namespace lidlark::drawing
