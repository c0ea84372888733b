#pragma once

#include "core/base/result.h"
#include "core/workbench/build.h"
#include "core/workbench/supply.h"

#include <string>
#include <vector>

namespace lidlark::cli {

/// A build as `sheet` reads it (README, build sheet).
struct BuildFile {
    std::vector<workbench::Supply> supplies;
    std::vector<workbench::Design> designs;
    workbench::Build build; ///< Each box with all its parts, whatever of them its design says.
};

/// Reads the JSON. Only its form is looked at here: what numbers may be is the sheet's business. A
/// field that is not known is refused too, so that a slip of the pen is not a default.
/// Errors: Invalid, "boxes.3.code: a text is wanted".
Result<BuildFile> readBuildFile(const std::string &text);

} // namespace lidlark::cli
