#pragma once

#include "core/cli/options.h"
#include "core/journal/fields.h"

#include <functional>
#include <string>

namespace lidlark::cli {

/// Numbers are read this widely, so that the use case can say what is wrong with one.
inline constexpr int mostSaid = 1'000'000;

/// A text that must be there and not be empty. Errors: Invalid, "child: missing".
Result<std::string> needText(const journal::Fields &fields, const char *key);

/// Opens the store, reads the input (JSON text itself, a file, or "-" for standard input), and lets
/// @p command do the rest.
int withInput(const Options &options, const std::string &input,
              const std::function<int(Desk &, const journal::Fields &)> &command);

} // namespace lidlark::cli
