#pragma once

#include "core/child/home_facts.h"
#include "core/wording/sentence.h"

#include <string>

namespace lidlark::wording {

/// One statement of the home sheet as it was said: "Home sheet: latex must stay away", "Home
/// sheet: Mirren puts nothing in the mouth".
/// @param person alias of whom it speaks; empty: of the home.
Sentence factSaid(const child::Fact &fact, const std::string &person);

} // namespace lidlark::wording
