#pragma once

#include "core/wording/sentence.h"

#include <string>

namespace lidlark::wording {

/// What an error speaks of, as words that can be translated where it is one of those that somebody
/// at a screen can meet: "this play", "pegs: more than the box held". Anything else as it is.
Argument detailWords(const std::string &detail);

} // namespace lidlark::wording
