#pragma once

#include "core/cli/options.h"

#include <string>
#include <vector>

namespace lidlark::cli {

struct MenuOptions {
    std::string child;
    std::string date;
    std::string part;
    std::string kite;
    int minutes = 0;
    std::vector<std::string> room; ///< Room words, or aliases of the home sheet.
    bool roomSaid = false;
    bool shown = false; ///< Keep that this menu was shown.
};

/// Each runs one command and returns its exit status.
int runDemo(const Options &options, const std::string &folder, int day);
int runMenu(const Options &options, const MenuOptions &menu);
int runBox(const Options &options, const std::string &child);
int runNotebook(const Options &options, const std::string &child);
int runVerify(const Options &options);
/// @param input JSON text, a file's name, or "-" for standard input.
int runPlay(const Options &options, const std::string &input);
int runPutBack(const Options &options, const std::string &input);
int runCount(const Options &options, const std::string &input);
int runFound(const Options &options, const std::string &input);

} // namespace lidlark::cli
