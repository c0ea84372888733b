#pragma once

#include "core/cli/crew_commands.h"

#include <functional>

namespace CLI {
class App;
}

namespace lidlark::cli {

/// What the crew's commands are asked.
struct CrewOptions {
    JoinOptions join;
    SyncOptions sync;
    EraseOptions erase;
};

/// Adds `join`, `sync` and `erase`. @param run becomes the one that was named.
void addCrewCommands(CLI::App &app, const Options &options, CrewOptions &crew,
                     std::function<int()> &run);

} // namespace lidlark::cli
