#pragma once

#include "core/catalogue/findings.h"

#include <string_view>

namespace lidlark::catalogue {

/// A finding at @p field unless both lines have the same numbers in digits, each as often. A
/// length, an age or a count that got lost in a translation could hurt somebody.
void checkSameNumbers(std::string_view english, std::string_view translated, std::string_view field,
                      Findings &findings);

} // namespace lidlark::catalogue
