#include "tests/arrows/arrow_table.h"

#include <algorithm>
#include <initializer_list>

namespace lidlark::arrows {

namespace {

using Folders = std::set<std::string>;

Folders in(std::string_view layer, std::initializer_list<std::string_view> names)
{
    Folders folders;
    for (const std::string_view name : names)
        folders.insert(std::string(layer) + "/" + std::string(name));
    return folders;
}

Folders together(std::initializer_list<Folders> groups)
{
    Folders all;
    for (const Folders &group : groups)
        all.insert(group.begin(), group.end());
    return all;
}

Folders namesOf(const ArrowTable &table)
{
    Folders names;
    for (const auto &[folder, targets] : table)
        names.insert(folder);
    return names;
}

ArrowTable withLayersAbove(ArrowTable table)
{
    const Folders base = in("core", {"base"});
    const Folders lower = together({base, namesOf(table)});
    const Folders stored = together({lower, in("core", {"store"})});
    const Folders used = together({stored, in("core", {"wording", "usecase", "crypto", "sync"})});
    table["core/base"] = {};
    // Words for people stand on the rules, and only what a person looks at stands on them.
    table["core/wording"] = lower;
    table["core/store"] = lower;
    table["core/usecase"] = stored;
    table["core/crypto"] = base;
    table["core/sync"] = together({stored, in("core", {"crypto", "wording"})});
    table["core/cli"] = used;

    table["mobile/design"] = in("mobile", {"platform"});
    table["mobile/platform"] = base;
    table["mobile/bridge"] = together({used, in("mobile", {"platform"})});
    const Folders screens =
        in("mobile", {"welcome", "today", "week", "kite", "play", "putback", "box", "notebook",
                      "crew", "homesheet", "settings", "workbench", "goals", "packing", "builds",
                      "shelf", "own", "video", "prints"});
    for (const std::string &screen : screens)
        table[screen] =
            together({lower, in("core", {"wording"}), in("mobile", {"bridge", "design"})});
    // Loaded while the app runs, so it stands on nothing of the app's.
    table["mobile/camera"] = {};
    table["mobile/crew"].merge(in("mobile", {"camera"}));
    table["mobile/app"] = together({used, screens, in("mobile", {"bridge", "design", "platform"})});
    return table;
}

/// Walks on from the end of @p walk; true as soon as the walk meets itself.
bool meetsItself(const ArrowTable &table, std::vector<std::string> &walk, Folders &finished)
{
    const auto found = table.find(walk.back());
    if (found == table.end())
        return false;
    for (const std::string &next : found->second) {
        const bool met = std::ranges::find(walk, next) != walk.end();
        if (!met && finished.contains(next))
            continue;
        walk.push_back(next);
        if (met || meetsItself(table, walk, finished))
            return true;
        walk.pop_back();
    }
    finished.insert(walk.back());
    return false;
}

} // namespace

const ArrowTable &arrowsAmongTheRules()
{
    const auto core = [](std::initializer_list<std::string_view> names) {
        return in("core", names);
    };
    static const ArrowTable table{
        {"core/measure", core({"base"})},
        {"core/grading", core({"base"})},
        {"core/catalogue", core({"base", "grading", "measure"})},
        {"core/drawing", core({"base"})},
        {"core/forecast", core({"base"})},
        {"core/journal", core({"base"})},
        {"core/checkin", core({"base", "journal"})},
        {"core/reminder", core({"base"})},
        {"core/play", core({"base", "catalogue", "crypto", "journal"})},
        {"core/child", core({"base", "catalogue", "journal"})},
        {"core/box", core({"base", "journal"})},
        {"core/crew", core({"base", "crypto", "journal"})},
        {"core/safety", core({"base", "catalogue", "child"})},
        {"core/rotation", core({"base", "catalogue", "checkin", "child", "safety"})},
        {"core/goals", core({"base", "catalogue", "child", "journal"})},
        {"core/workbench", core({"base", "box", "catalogue", "child", "journal"})},
    };
    return table;
}

const ArrowTable &arrowsOfTheHouse()
{
    static const ArrowTable table = withLayersAbove(arrowsAmongTheRules());
    return table;
}

std::string folderOf(std::string_view path)
{
    const std::size_t first = path.find('/');
    const std::size_t second = first == std::string_view::npos ? first : path.find('/', first + 1);
    return std::string(path.substr(0, second == std::string_view::npos ? first : second));
}

bool mayName(const ArrowTable &table, std::string_view from, std::string_view to)
{
    const bool toTests = to.starts_with("tests");
    if (from == "tests/core")
        return toTests || to.starts_with("core/");
    if (from.starts_with("tests"))
        return true;
    const auto arrows = table.find(from);
    if (from == to)
        return arrows != table.end();
    return arrows != table.end() && arrows->second.contains(std::string(to));
}

std::optional<std::string> circleIn(const ArrowTable &table)
{
    Folders finished;
    for (const auto &[folder, targets] : table) {
        std::vector<std::string> walk{folder};
        if (!meetsItself(table, walk, finished))
            continue;
        std::string told;
        for (auto step = std::ranges::find(walk, walk.back()); step != walk.end(); ++step)
            told += (told.empty() ? "" : " -> ") + *step;
        return told;
    }
    return std::nullopt;
}

} // namespace lidlark::arrows
