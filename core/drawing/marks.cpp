#include "core/drawing/marks.h"

#include "core/drawing/fault.h"

#include <algorithm>
#include <array>
#include <string_view>

namespace lidlark::drawing {

namespace {

using Drawer = void (*)(const YamlNode &mark, const Place &place);
struct MarkKind {
    std::string_view name;
    Drawer draw;
};

/// A mark is known by its first field.
constexpr std::array markKinds{
    MarkKind{"body", drawBody},     MarkKind{"line", drawLine},   MarkKind{"detail", drawDetail},
    MarkKind{"motion", drawMotion}, MarkKind{"dots", drawDots},   MarkKind{"fill", drawFill},
    MarkKind{"bone", drawBone},     MarkKind{"arrow", drawArrow}, MarkKind{"outline", drawOutline},
    MarkKind{"table", drawTable},   MarkKind{"floor", drawFloor}, MarkKind{"part", drawPart},
    MarkKind{"item", drawItem},     MarkKind{"group", drawGroup}, MarkKind{"hand", drawHand},
    MarkKind{"person", drawPerson}};

constexpr int deepest = 6;

/// A drawing from another file, laid on this one. Its faults carry its own name.
void drawOther(Kind kind, const Fields &mark, std::string_view name, Point usualAnchor,
               const Place &place)
{
    const YamlNode *other = place.shelf->find(kind, name);
    if (!other)
        refuse(mark.record(), "there is no " + std::string(kind == Kind::Item ? "item" : "part") +
                                  " \"" + std::string(name) + "\"");
    if (place.depth >= deepest)
        refuse(mark.record(), "parts are nested too deeply, or in a ring");
    const Fields fields(*other, {"draw", "anchor"});
    Place inside = place.moved(placedBy(mark, fields.point("anchor", usualAnchor)));
    inside.tintAsked = tinted(mark, place);
    // A small part with the full shift would lose its tint to the side.
    constexpr double smallPart = 0.8;
    constexpr double smallShift = 3;
    if (sizeOf(mark) < smallPart)
        inside.tintShift = std::min(inside.tintShift, smallShift);
    inside.depth = place.depth + 1;
    try {
        drawMarks(listIn(fields.at("draw")), inside);
    } catch (Fault &fault) {
        if (fault.file.empty())
            fault.file = Shelf::fileOf(kind, name);
        throw;
    }
}

} // namespace

void drawMarks(const std::vector<YamlNode> &marks, const Place &place)
{
    for (const YamlNode &mark : marks) {
        if (mark.kind != YamlNode::Kind::Map || mark.children.empty())
            refuse(mark, "a mark is named fields");
        const std::string &name = mark.children.front().key;
        const auto kind = std::ranges::find(markKinds, name, &MarkKind::name);
        if (kind == markKinds.end())
            refuse(mark, "there is no mark \"" + name + "\"");
        kind->draw(mark, place);
    }
}

bool tinted(const Fields &mark, const Place &place)
{
    const YamlNode *tint = mark.find("tint");
    if (!tint)
        return false;
    return tint->text == "asked" ? place.tintAsked : flagIn(*tint);
}

namespace {

Point bothSizes(const Fields &mark)
{
    const YamlNode *size = mark.find("size");
    if (!size)
        return {1, 1};
    if (size->kind == YamlNode::Kind::List)
        return pointIn(*size);
    return {numberIn(*size), numberIn(*size)};
}

} // namespace

double sizeOf(const Fields &mark)
{
    const Point size = bothSizes(mark);
    return std::min(size.x, size.y);
}

Affine placedBy(const Fields &mark, Point anchor)
{
    return affineOf({mark.point("at", anchor), mark.number("turn", 0), bothSizes(mark),
                     mark.flag("flip"), anchor});
}

void drawPart(const YamlNode &mark, const Place &place)
{
    const Fields fields(mark, {"part", "at", "turn", "size", "flip", "tint"});
    drawOther(Kind::Part, fields, fields.at("part").text, {0, 0}, place);
}

void drawItem(const YamlNode &mark, const Place &place)
{
    const Fields fields(mark, {"item", "at", "turn", "size", "flip", "tint"});
    constexpr Point middle{48, 48};
    drawOther(Kind::Item, fields, fields.at("item").text, middle, place);
}

void drawGroup(const YamlNode &mark, const Place &place)
{
    const Fields fields(mark, {"group", "at", "turn", "size", "flip", "anchor"});
    drawMarks(listIn(fields.at("group")),
              place.moved(placedBy(fields, fields.point("anchor", {0, 0}))));
}

} // namespace lidlark::drawing
