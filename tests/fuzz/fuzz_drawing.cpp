#include "tests/fuzz/target.h"

#include "core/drawing/compose.h"
#include "core/drawing/path.h"

namespace lidlark::fuzz {

namespace {

using drawing::Kind;

void checkSvg(const std::variant<std::string, drawing::Fault> &composed)
{
    if (const auto *svg = std::get_if<std::string>(&composed)) {
        must(svg->find("nan") == std::string::npos && svg->find("inf") == std::string::npos,
             "a drawing has whole places");
        must(svg->ends_with("</svg>\n"), "a drawing is whole");
    } else {
        must(!std::get<drawing::Fault>(composed).reason.empty(), "a fault says why");
    }
}

/// The file stands for every kind at once, so that it can name itself.
void draw(const std::string &text)
{
    std::vector<drawing::DrawingFile> files;
    for (const Kind kind : drawing::kinds)
        files.push_back({kind, "made", text});
    const drawing::Shelf shelf(files);
    checkSvg(drawing::compose(shelf, Kind::Scene, "made"));
    checkSvg(drawing::compose(shelf, Kind::Item, "made"));
    checkSvg(drawing::composeLeftHanded(shelf, "made"));
}

void readPath(std::string_view bytes)
{
    const auto path = drawing::readPath(bytes);
    if (!path)
        return;
    const std::string text = drawing::svgText(*path);
    const auto again = drawing::readPath(text);
    must(again && again->size() == path->size(), "a path is read as it was written");
    for (std::size_t i = 0; i < path->size(); ++i)
        must((*again)[i].command == (*path)[i].command, "a path keeps its commands");
}

} // namespace

void drawing(std::string_view bytes)
{
    draw(std::string(bytes));
    readPath(bytes);
}

} // namespace lidlark::fuzz
