#pragma once

#include "core/child/home_facts.h"

namespace lidlark::child {

/// What is wrong with a statement before it is written; the reason begins with the fact. Refused:
/// - a value the fact does not have ("latex: perhaps"), a day that is none or still to come;
/// - a number to call that is none (phone_number.h); an empty one takes the number off the sheet;
/// - what contradicts the sheet on the less careful side: "no longer mouths" of somebody who eats
///   what is no food (pica), and "adult" of somebody born less than 18 years ago. The careful
///   answer may always be said.
/// @param sheet as it stands; null: nothing is known.
/// @returns nothing when it may be said.
std::optional<std::string> problemWith(const Fact &fact, const HomeSheet *sheet, Day today);

} // namespace lidlark::child
