#pragma once

#include "core/drawing/fields.h"
#include "core/drawing/ink.h"
#include "core/drawing/shelf.h"

#include <vector>

namespace lidlark::drawing {

/// Where and how marks are drawn: on which print, from which shelf, moved how.
struct Place {
    Print *print = nullptr;
    const Shelf *shelf = nullptr;
    Affine map;
    bool tintAsked = true; ///< What "tint: asked" of a part comes to.
    double tintShift = 5;  ///< How far the tint is printed off register, px.
    int depth = 0;         ///< Parts inside parts.

    [[nodiscard]] Place moved(const Affine &inner) const
    {
        Place place = *this;
        place.map = map * inner;
        return place;
    }
};

/// Draws a list of marks, back to front. Throws Fault.
void drawMarks(const std::vector<YamlNode> &marks, const Place &place);

/// Whether the field `tint` of a mark asks for the tint here.
[[nodiscard]] bool tinted(const Fields &mark, const Place &place);

/// Where `at`, `turn`, `size` (one number or two) and `flip` of a mark lay its anchor.
[[nodiscard]] Affine placedBy(const Fields &mark, Point anchor);
/// The smaller of the two sizes of a mark.
[[nodiscard]] double sizeOf(const Fields &mark);

// The kinds of marks, by what they need to know.
void drawBody(const YamlNode &mark, const Place &place);
void drawLine(const YamlNode &mark, const Place &place);
void drawDetail(const YamlNode &mark, const Place &place);
void drawMotion(const YamlNode &mark, const Place &place);
void drawDots(const YamlNode &mark, const Place &place);
void drawFill(const YamlNode &mark, const Place &place);
void drawBone(const YamlNode &mark, const Place &place);
void drawArrow(const YamlNode &mark, const Place &place);
void drawOutline(const YamlNode &mark, const Place &place);
void drawTable(const YamlNode &mark, const Place &place);
void drawFloor(const YamlNode &mark, const Place &place);
void drawPart(const YamlNode &mark, const Place &place);
void drawItem(const YamlNode &mark, const Place &place);
void drawGroup(const YamlNode &mark, const Place &place);
void drawHand(const YamlNode &mark, const Place &place);
void drawPerson(const YamlNode &mark, const Place &place);

} // namespace lidlark::drawing
