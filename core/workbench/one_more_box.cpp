#include "core/workbench/one_more_box.h"

namespace lidlark::workbench {

OrProblems<OneMoreBox> oneMoreBox(const Build &build, std::span<const Supply> supplies,
                                  const BuildBox &box, const SetAside &aside)
{
    return moreBoxes(build, supplies, {&box, 1}, aside);
}

OrProblems<OneMoreBox> moreBoxes(const Build &build, std::span<const Supply> supplies,
                                 std::span<const BuildBox> boxes, const SetAside &aside)
{
    const auto now = sheetOf(build, supplies, aside);
    if (const auto *problems = std::get_if<BuildProblems>(&now))
        return *problems;
    Build larger = build;
    larger.boxes.insert(larger.boxes.end(), boxes.begin(), boxes.end());
    const auto then = sheetOf(larger, supplies, aside);
    if (const auto *problems = std::get_if<BuildProblems>(&then))
        return *problems;
    const Sheet &before = std::get<Sheet>(now);
    const Sheet &after = std::get<Sheet>(then);
    OneMoreBox more{{}, after.spend, {after.spend.pence - before.spend.pence}, after.boxes.back()};
    for (std::size_t i = 0; i < after.lines.size(); ++i) {
        if (before.lines[i].packs != after.lines[i].packs)
            more.changed.push_back({before.lines[i], after.lines[i]});
    }
    return more;
}

} // namespace lidlark::workbench
