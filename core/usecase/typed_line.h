#pragma once

#include "core/base/result.h"

#include <cstddef>
#include <string>

namespace lidlark::usecase {

/// What a person typed as one line, without the white space around it. Errors: Invalid, with
/// @p field named (more than @p most characters, more than one line, or no plain text).
Result<std::string> typedLine(const std::string &field, const std::string &typed, std::size_t most);

} // namespace lidlark::usecase
