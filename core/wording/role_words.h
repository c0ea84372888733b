#pragma once

#include "core/crew/role.h"
#include "core/wording/sentence.h"

namespace lidlark::wording {

/// "Parent": somebody's part in a crew.
Sentence roleWord(crew::Role role);

/// What somebody of that part can see, and what not (events.md 4).
Sentence whatRoleSees(crew::Role role);

} // namespace lidlark::wording
