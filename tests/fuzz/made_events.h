#pragma once

#include "core/journal/event.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lidlark::fuzz {

/// The fields that a kind of event would have in a store: canonical JSON of an object.
/// @returns nothing for what is no such object.
std::optional<std::string> canonicalFields(std::string_view text);

/// Events of one box, a line each: five characters for kind (A is the first of kindNames), device,
/// counter, instant and day, then the fields. A line that makes none is left out; of two with one
/// device and counter only the first is made, and no more than a folding takes.
/// "Ba103{...}"
std::vector<journal::Event> madeEvents(std::string_view lines);

} // namespace lidlark::fuzz
