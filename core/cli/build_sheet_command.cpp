#include "core/cli/build_file.h"
#include "core/cli/build_sheet_print.h"
#include "core/cli/commands.h"
#include "core/cli/file_contents.h"
#include "core/wording/build_words.h"

#include <algorithm>
#include <iostream>
#include <set>

namespace lidlark::cli {

namespace {

int failWith(const workbench::BuildProblems &problems)
{
    for (const workbench::BuildProblem &problem : problems)
        std::cerr << problem.field << ": " << wording::fill(wording::buildProblemSentence(problem))
                  << '\n';
    return problemInData;
}

/// The box with the code @p code once more, under a code that no box has.
std::optional<workbench::BuildBox> anotherLike(const workbench::Build &build,
                                               const std::string &code)
{
    const auto found = std::ranges::find(build.boxes, code, &workbench::BuildBox::code);
    if (found == build.boxes.end())
        return std::nullopt;
    workbench::BuildBox another = *found;
    std::set<std::string> codes;
    for (const workbench::BuildBox &box : build.boxes)
        codes.insert(box.code);
    while (codes.contains(another.code))
        another.code += "+";
    return another;
}

} // namespace

int runBuildSheet(const Options &options, const BuildSheetOptions &asked)
{
    const auto text = contentsOf(asked.file);
    if (!text)
        return fail({ErrorCode::NotFound, asked.file});
    const auto file = readBuildFile(*text);
    if (!file)
        return fail(file.error());
    const auto sheet = workbench::sheetOf(file->build, file->supplies);
    if (const auto *problems = std::get_if<workbench::BuildProblems>(&sheet))
        return failWith(*problems);
    std::optional<workbench::OneMoreBox> more;
    if (!asked.oneMore.empty()) {
        const auto box = anotherLike(file->build, asked.oneMore);
        if (!box)
            return fail({ErrorCode::NotFound, "a box with the code " + asked.oneMore});
        const auto answer = workbench::oneMoreBox(file->build, file->supplies, *box);
        if (const auto *problems = std::get_if<workbench::BuildProblems>(&answer))
            return failWith(*problems);
        more = std::get<workbench::OneMoreBox>(answer);
    }
    const SheetAnswer answer{*file, std::get<workbench::Sheet>(sheet), more};
    std::cout << (options.json ? jsonText(answer) : plainText(answer));
    return allWell;
}

} // namespace lidlark::cli
