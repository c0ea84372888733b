#pragma once

#include "core/cli/commands.h"

#include <functional>

namespace CLI {
class App;
}

namespace lidlark::cli {

/// Adds `sheet`. Its run is put into @p run once the command line asks for it.
void addBuildSheet(CLI::App &app, const Options &options, BuildSheetOptions &asked,
                   std::function<int()> &run);

} // namespace lidlark::cli
