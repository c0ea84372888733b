#pragma once

#include "core/drawing/path.h"

#include <string>

namespace lidlark::drawing {

/// The three colours a drawing is printed in; the app exchanges them for those of the look in
/// force (look.md, section 5).
enum class Colour { Ink, Tint, Paper };

/// The ink line of a drawing, px of the viewBox (look.md, section 5).
inline constexpr double lineWidth = 3.2;
/// Both edges of a bone together: an ink line on either side.
inline constexpr double boneEdge = 2 * lineWidth;

/// How a line is drawn. Width in px of the viewBox; it never scales.
struct Stroke {
    double width = lineWidth;
    Colour colour = Colour::Ink;
    double dotGap = 0; ///< Above 0: a dotted line with its dots so far apart.
};

/// Collects the shapes of one SVG, back to front.
class Print
{
public:
    void fill(const Path &path, Colour colour);
    void stroke(const Path &path, const Stroke &stroke);
    /// A thick line with an edge of ink on both sides: a finger, a limb, a straw.
    void bone(const Path &path, double width, double edge, Colour core);

    [[nodiscard]] const std::string &shapes() const { return m_shapes; }

private:
    std::string m_shapes;
};

} // namespace lidlark::drawing
