#pragma once

#include "core/cli/build_file.h"
#include "core/workbench/one_more_box.h"
#include "core/workbench/sheet.h"

#include <optional>
#include <string>

namespace lidlark::cli {

/// What `sheet` has to say.
struct SheetAnswer {
    const BuildFile &file;
    const workbench::Sheet &sheet;
    const std::optional<workbench::OneMoreBox> &more;
};

/// One line of JSON (README, build sheet). Money in whole pence.
std::string jsonText(const SheetAnswer &answer);

/// A table of what to buy, then what is in each box; boxes that are alike are one line.
std::string plainText(const SheetAnswer &answer);

/// What is special about a box, in words; empty: it is as its design, or has none.
std::vector<std::string> differencesOf(const BuildFile &file, const workbench::BuildBox &box);

/// What an item is called in the file; its id where the file does not know it.
std::string nameOf(const BuildFile &file, const ItemId &item);

} // namespace lidlark::cli
