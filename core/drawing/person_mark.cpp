#include "core/drawing/marks.h"

namespace lidlark::drawing {

namespace {

// Sizes of a plain figure at size 1, px.
constexpr double armWidth = 15;
constexpr double legWidth = 19;
constexpr double trunkWidth = 32;
constexpr double neckWidth = 13;
constexpr double headRadius = 16;

struct Limb {
    Path path;
    double width = 0;
};

Limb limbIn(const YamlNode &node, double size, const Place &place)
{
    const Fields fields(node, {"arm", "leg"});
    const bool isArm = fields.find("arm") != nullptr;
    const YamlNode &points = fields.at(isArm ? "arm" : "leg");
    return {moved(lineThrough(pointsIn(points)), place.map), (isArm ? armWidth : legWidth) * size};
}

void drawLimbs(const std::vector<YamlNode> &limbs, double size, const Place &place)
{
    for (const YamlNode &node : limbs) {
        const Limb limb = limbIn(node, size, place);
        place.print->bone(limb.path, limb.width, boneEdge, Colour::Paper);
    }
}

/// Trunk, neck and the limbs that grow out of the trunk without a line between.
std::vector<Limb> silhouette(const Fields &person, double size, const Place &place)
{
    const std::vector<Point> trunk = pointsIn(person.at("trunk"));
    const Point head = pointIn(person.at("head"));
    std::vector<Limb> limbs{{moved(lineThrough(trunk), place.map), trunkWidth * size}};
    for (const YamlNode &node : person.list("joined"))
        limbs.push_back(limbIn(node, size, place));
    const Point neck = person.point("neck", trunk.front());
    limbs.push_back({moved(lineThrough({head, neck}), place.map), neckWidth * size});
    return limbs;
}

} // namespace

/// A whole figure without face, hair or clothes, so that any child can be meant.
void drawPerson(const YamlNode &mark, const Place &place)
{
    const Fields person(
        Fields(mark, {"person"}).at("person"),
        {"size", "head", "trunk", "neck", "behind", "joined", "front", "holds", "tint"});
    const double size = person.number("size", 1);
    drawLimbs(person.list("behind"), size, place);
    const std::vector<Limb> limbs = silhouette(person, size, place);
    for (const Limb &limb : limbs)
        place.print->stroke(limb.path, {limb.width});
    for (const Limb &limb : limbs)
        place.print->stroke(limb.path, {limb.width - boneEdge, Colour::Paper});
    if (tinted(person, place))
        place.print->stroke(limbs.front().path, {limbs.front().width - boneEdge, Colour::Tint});
    const Path head = moved(circle(pointIn(person.at("head")), headRadius * size), place.map);
    place.print->fill(head, Colour::Paper);
    place.print->stroke(head, {});
    drawMarks(person.list("holds"), place);
    drawLimbs(person.list("front"), size, place);
}

} // namespace lidlark::drawing
