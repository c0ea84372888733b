#pragma once

#include "core/wording/sentence.h"

#include <vector>

namespace lidlark::wording {

/// Parts in one line: "Ruth. Two stick-on eyes lost. Stopped early". Empty without parts.
Sentence inOneLine(std::vector<Argument> parts);

/// The same with its full stop.
Sentence asSentence(std::vector<Argument> parts);

} // namespace lidlark::wording
