#include "core/drawing/compose.h"

#include "core/drawing/marks.h"

#include <algorithm>

namespace lidlark::drawing {

namespace {

/// The tint is printed this far off register, down and to the right, px.
constexpr double sceneShift = 5;
constexpr double itemShift = 3;

std::string svg(Kind kind, const std::string &shapes)
{
    const std::string_view area = kind == Kind::Item
                                      ? R"(viewBox="0 0 96 96" width="96" height="96")"
                                      : R"(viewBox="-40 0 400 240" width="400" height="240")";
    return R"(<svg xmlns="http://www.w3.org/2000/svg" )" + std::string(area) + ">\n" + shapes +
           "</svg>\n";
}

/// Left and right exchanged about the middle of a scene.
constexpr Affine exchanged{-1, 0, 0, 1, 320, 0};

std::variant<std::string, Fault> composeMapped(const Shelf &shelf, Kind kind, std::string_view name,
                                               const Affine &map)
{
    const std::string file = Shelf::fileOf(kind, name);
    const YamlNode *drawing = shelf.find(kind, name);
    if (!drawing)
        return Fault{file, 0, "there is no such drawing"};
    Print print;
    Place place;
    place.print = &print;
    place.shelf = &shelf;
    place.map = map;
    place.tintShift = kind == Kind::Item ? itemShift : sceneShift;
    try {
        const Fields fields(*drawing, {"draw", "anchor", "one_way"});
        drawMarks(listIn(fields.at("draw")), place);
    } catch (const Fault &fault) {
        return Fault{fault.file.empty() ? file : fault.file, fault.line, fault.reason};
    }
    return svg(kind, print.shapes());
}

} // namespace

std::variant<std::string, Fault> compose(const Shelf &shelf, Kind kind, std::string_view name)
{
    return composeMapped(shelf, kind, name, Affine{});
}

bool hasLeftHanded(const Shelf &shelf, std::string_view scene)
{
    const YamlNode *drawing = shelf.find(Kind::Scene, scene);
    return drawing && std::ranges::find(drawing->children, "one_way", &YamlNode::key) ==
                          drawing->children.end();
}

std::variant<std::string, Fault> composeLeftHanded(const Shelf &shelf, std::string_view scene)
{
    if (!hasLeftHanded(shelf, scene))
        return Fault{Shelf::fileOf(Kind::Scene, scene), 0, "this drawing goes one way only"};
    return composeMapped(shelf, Kind::Scene, scene, exchanged);
}

} // namespace lidlark::drawing
