#pragma once

#include "core/usecase/island.h"
#include "core/usecase/workplace.h"

namespace lidlark::usecase {

/// The therapist hands over one box: whose it is, lid list revision 1, where it is, the home
/// sheets, the goals. One transaction.
Outcome issueBox(Workplace &therapist, const island::Family &family);

} // namespace lidlark::usecase
