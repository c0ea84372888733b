#include "tests/fuzz/target.h"

#include "core/cli/build_file.h"
#include "core/wording/build_words.h"
#include "core/workbench/sheet.h"

namespace lidlark::fuzz {

using namespace workbench;

void build(std::string_view bytes)
{
    const auto file = cli::readBuildFile(std::string(bytes));
    if (!file) {
        must(file.error().detail.find(": ") != std::string::npos, "what is refused has a field");
        return;
    }
    const auto answer = sheetOf(file->build, file->supplies);
    if (const auto *problems = std::get_if<BuildProblems>(&answer)) {
        must(!problems->empty(), "what is refused has a reason");
        for (const BuildProblem &problem : *problems)
            must(!wording::fill(wording::buildProblemSentence(problem)).empty(), "in words");
        return;
    }
    const auto &sheet = std::get<Sheet>(answer);
    std::int64_t spend = 0;
    for (const SheetLine &line : sheet.lines) {
        must(line.leftover >= 0, "nothing is short");
        must(line.inStock + line.bought >= line.need.pieces + line.need.spares,
             "need and spares are covered");
        spend += line.spend.pence;
    }
    must(spend == sheet.spend.pence && spend >= 0, "the lines add up");
    for (const BoxCost &box : sheet.boxes)
        must(box.material.pence >= 0, "no box is worth less than nothing");
}

} // namespace lidlark::fuzz
