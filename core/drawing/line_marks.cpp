#include "core/drawing/marks.h"

#include <cmath>
#include <numbers>

namespace lidlark::drawing {

namespace {

// Widths of lines, px (look.md, section 5).
constexpr double detailWidth = 2.2;
constexpr double motionWidth = 2.6;
constexpr double boneWidth = 18;

constexpr double leftEnd = -40;
constexpr double rightEnd = 360;

Colour colourOf(const Fields &mark, Colour otherwise)
{
    const YamlNode *colour = mark.find("colour");
    if (!colour)
        return otherwise;
    if (colour->text == "ink")
        return Colour::Ink;
    if (colour->text == "tint")
        return Colour::Tint;
    if (colour->text == "paper")
        return Colour::Paper;
    refuse(*colour, "a colour is ink, tint or paper");
}

Path pathOf(const Fields &mark, std::string_view key, const Place &place)
{
    return moved(pathIn(mark.at(key)), place.map);
}

void strokeAcross(double y, const Place &place)
{
    place.print->stroke(moved(lineThrough({{leftEnd, y}, {rightEnd, y}}), place.map), {});
}

/// The two strokes of an arrow's head, at the end of the path in the direction it comes from.
Path headOf(const Path &shaft, double length)
{
    std::vector<Point> points;
    for (const Segment &segment : shaft)
        points.insert(points.end(), segment.points.begin(), segment.points.end());
    const Point tip = points.back();
    const Point before = points[points.size() - 2];
    const double direction = std::atan2(tip.y - before.y, tip.x - before.x);
    Path head;
    for (const double side : {1.0, -1.0}) {
        const double angle = direction + side * 150 * std::numbers::pi / 180;
        head.push_back({'M', {tip}});
        head.push_back(
            {'L', {{tip.x + length * std::cos(angle), tip.y + length * std::sin(angle)}}});
    }
    return head;
}

/// One piece of an outline: a closed area, or a limb of some width.
struct OutlinePiece {
    Path path;
    double limbWidth = 0;
};

std::vector<OutlinePiece> piecesOf(const Fields &mark, const Place &place)
{
    std::vector<OutlinePiece> pieces;
    for (const YamlNode &node : listIn(mark.at("outline"))) {
        const Fields piece(node, {"area", "limb", "width"});
        if (piece.find("limb"))
            pieces.push_back({pathOf(piece, "limb", place), piece.number("width", boneWidth)});
        else
            pieces.push_back({pathOf(piece, "area", place), 0});
    }
    return pieces;
}

void fillPieces(const std::vector<OutlinePiece> &pieces, Colour colour, const Place &place)
{
    for (const OutlinePiece &piece : pieces) {
        if (piece.limbWidth > 0)
            place.print->stroke(piece.path, {piece.limbWidth - boneEdge, colour});
        else
            place.print->fill(piece.path, colour);
    }
}

} // namespace

void drawBody(const YamlNode &mark, const Place &place)
{
    const Fields fields(mark, {"body", "tint", "width", "shift"});
    const Path path = pathOf(fields, "body", place);
    place.print->fill(path, Colour::Paper);
    if (tinted(fields, place)) {
        const double shift = fields.number("shift", place.tintShift);
        place.print->fill(moved(path, shiftedBy(shift, shift)), Colour::Tint);
    }
    place.print->stroke(path, {fields.number("width", lineWidth)});
}

void drawLine(const YamlNode &mark, const Place &place)
{
    const Fields fields(mark, {"line", "width", "colour"});
    place.print->stroke(pathOf(fields, "line", place),
                        {fields.number("width", lineWidth), colourOf(fields, Colour::Ink)});
}

void drawDetail(const YamlNode &mark, const Place &place)
{
    place.print->stroke(pathOf(Fields(mark, {"detail"}), "detail", place), {detailWidth});
}

void drawMotion(const YamlNode &mark, const Place &place)
{
    place.print->stroke(pathOf(Fields(mark, {"motion"}), "motion", place), {motionWidth});
}

void drawDots(const YamlNode &mark, const Place &place)
{
    const Fields fields(mark, {"dots", "width", "gap"});
    constexpr double usualGap = 6.6;
    place.print->stroke(
        pathOf(fields, "dots", place),
        {fields.number("width", motionWidth), Colour::Ink, fields.number("gap", usualGap)});
}

void drawFill(const YamlNode &mark, const Place &place)
{
    const Fields fields(mark, {"fill", "colour"});
    place.print->fill(pathOf(fields, "fill", place), colourOf(fields, Colour::Paper));
}

void drawBone(const YamlNode &mark, const Place &place)
{
    const Fields fields(mark, {"bone", "width", "edge", "tint"});
    place.print->bone(pathOf(fields, "bone", place), fields.number("width", boneWidth),
                      fields.number("edge", boneEdge),
                      tinted(fields, place) ? Colour::Tint : Colour::Paper);
}

void drawArrow(const YamlNode &mark, const Place &place)
{
    const Fields fields(mark, {"arrow", "head", "width"});
    const Path shaft = pathOf(fields, "arrow", place);
    if (shaft.size() < 2 || shaft.back().points.empty())
        refuse(mark, "an arrow is an open path");
    const Stroke stroke{fields.number("width", lineWidth)};
    constexpr double usualHead = 10;
    place.print->stroke(shaft, stroke);
    place.print->stroke(headOf(shaft, fields.number("head", usualHead)), stroke);
}

/// One silhouette: all ink first, then all paper, so that no line runs where the pieces meet.
void drawOutline(const YamlNode &mark, const Place &place)
{
    const Fields fields(mark, {"outline", "tint"});
    const std::vector<OutlinePiece> pieces = piecesOf(fields, place);
    for (const OutlinePiece &piece : pieces)
        place.print->stroke(piece.path, {piece.limbWidth > 0 ? piece.limbWidth : boneEdge});
    fillPieces(pieces, tinted(fields, place) ? Colour::Tint : Colour::Paper, place);
}

/// The edge of a table; a near one shows its grain.
void drawTable(const YamlNode &mark, const Place &place)
{
    const double y = numberIn(Fields(mark, {"table"}).at("table"));
    strokeAcross(y, place);
    constexpr double nearEdge = 190;
    constexpr double grain = 13;
    if (y <= nearEdge)
        return;
    for (const auto &[from, to] : {std::pair{-16.0, 40.0}, std::pair{270.0, 332.0}})
        place.print->stroke(moved(lineThrough({{from, y + grain}, {to, y + grain}}), place.map),
                            {detailWidth});
}

void drawFloor(const YamlNode &mark, const Place &place)
{
    strokeAcross(numberIn(Fields(mark, {"floor"}).at("floor")), place);
}

} // namespace lidlark::drawing
