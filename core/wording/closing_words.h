#pragma once

#include "core/wording/sentence.h"

#include <string>
#include <vector>

namespace lidlark::wording {

/// Why a play cannot end yet: "First count the stick-on eyes home: 2 of 6." (safety.md SP-04)
Sentence countHomeFirst(const Argument &name, int home, int due);

/// Where the box belongs while a small child lives here, at set-up and when it is put away:
/// "Keep the box out of Mirren's reach." (safety.md SP-04)
/// @param aliases of the small ones; empty: somebody small who has no name here.
Sentence outOfReach(const std::vector<std::string> &aliases);

} // namespace lidlark::wording
