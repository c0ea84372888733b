#include "core/cli/commands.h"
#include "core/cli/file_contents.h"
#include "core/drawing/compose.h"

#include <algorithm>
#include <array>
#include <iostream>

namespace lidlark::cli {

namespace {

namespace fs = std::filesystem;
using drawing::Kind;

/// What is a drawing of its own, and how its file begins; hands and parts are only in others.
struct Output {
    Kind kind;
    const char *prefix;
};
constexpr std::array outputs{Output{Kind::Item, "item-"}, Output{Kind::Scene, "scene-"}};

std::vector<drawing::DrawingFile> filesIn(const fs::path &root)
{
    std::vector<drawing::DrawingFile> files;
    for (const Kind kind : drawing::kinds) {
        std::error_code missing;
        for (const fs::directory_entry &entry :
             fs::directory_iterator(root / drawing::folderOf(kind), missing)) {
            if (entry.path().extension() == ".yaml")
                files.push_back(
                    {kind, entry.path().stem().string(), contentsOf(entry.path()).value_or("")});
        }
    }
    return files;
}

/// A file that stays the same keeps its time, so that nothing is built again for it.
bool write(const fs::path &path, const std::string &text)
{
    if (contentsOf(path) == text)
        return true;
    std::ofstream file(path, std::ios::binary);
    file << text;
    file.close();
    return !file.fail();
}

/// @returns whether it was composed and written.
bool keep(const std::variant<std::string, drawing::Fault> &drawn, const fs::path &path)
{
    if (const auto *fault = std::get_if<drawing::Fault>(&drawn)) {
        std::cerr << fault->text() << '\n';
        return false;
    }
    if (write(path, std::get<std::string>(drawn)))
        return true;
    std::cerr << path.string() << " could not be written.\n";
    return false;
}

/// @returns how many could not be drawn.
int drawKind(const drawing::Shelf &shelf, const Output &output, const DrawOptions &asked)
{
    int failed = 0;
    for (const std::string &name : shelf.names(output.kind)) {
        const std::string target = output.prefix + name;
        if (!asked.only.empty() && std::ranges::find(asked.only, target) == asked.only.end())
            continue;
        const fs::path to(asked.to);
        failed += keep(drawing::compose(shelf, output.kind, name), to / (target + ".svg")) ? 0 : 1;
        if (output.kind == Kind::Scene && drawing::hasLeftHanded(shelf, name))
            failed +=
                keep(drawing::composeLeftHanded(shelf, name), to / (target + "-left.svg")) ? 0 : 1;
    }
    return failed;
}

} // namespace

int runDraw(const DrawOptions &asked)
{
    const std::vector<drawing::DrawingFile> files = filesIn(asked.from);
    if (files.empty()) {
        std::cerr << "There are no drawings in " << asked.from
                  << ": it needs the folders hands, parts, items and scenes.\n";
        return problemInData;
    }
    std::error_code refused;
    fs::create_directories(asked.to, refused);
    const drawing::Shelf shelf(files);
    for (const drawing::Fault &fault : shelf.faults())
        std::cerr << fault.text() << '\n';
    int failed = static_cast<int>(shelf.faults().size());
    for (const Output &output : outputs)
        failed += drawKind(shelf, output, asked);
    return failed == 0 ? allWell : problemInData;
}

} // namespace lidlark::cli
