#pragma once

#include "core/cli/options.h"

#include <string>

namespace lidlark::cli {

/// Prints the child's box as JSON: what the commands that change it answer with.
/// @returns the exit status.
int printBox(Desk &desk, const std::string &child);

} // namespace lidlark::cli
