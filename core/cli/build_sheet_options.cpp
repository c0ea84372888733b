#include "core/cli/build_sheet_options.h"

#include <CLI/CLI.hpp>

namespace lidlark::cli {

void addBuildSheet(CLI::App &app, const Options &options, BuildSheetOptions &asked,
                   std::function<int()> &run)
{
    CLI::App *command =
        app.add_subcommand("sheet", "What to buy for a build, and what is in each box");
    command->add_option("file", asked.file, "The build's JSON file")->required();
    command->add_option("--one-more", asked.oneMore,
                        "A box's code: what one more like it changes at the till");
    command->callback([&options, &asked, &run] {
        run = [&options, &asked] { return runBuildSheet(options, asked); };
    });
}

} // namespace lidlark::cli
