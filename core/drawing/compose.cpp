#include "core/drawing/compose.h"

#include "core/drawing/marks.h"

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

} // namespace

std::variant<std::string, Fault> compose(const Shelf &shelf, Kind kind, std::string_view name)
{
    const std::string file = Shelf::fileOf(kind, name);
    const YamlNode *drawing = shelf.find(kind, name);
    if (!drawing)
        return Fault{file, 0, "there is no such drawing"};
    Print print;
    Place place;
    place.print = &print;
    place.shelf = &shelf;
    place.tintShift = kind == Kind::Item ? itemShift : sceneShift;
    try {
        const Fields fields(*drawing, {"draw", "anchor"});
        drawMarks(listIn(fields.at("draw")), place);
    } catch (const Fault &fault) {
        return Fault{fault.file.empty() ? file : fault.file, fault.line, fault.reason};
    }
    return svg(kind, print.shapes());
}

} // namespace lidlark::drawing
