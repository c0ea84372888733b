#pragma once

#include "core/usecase/workplace.h"
#include "core/workbench/kept_supply.h"

namespace lidlark::usecase {

/// Keeps how an item is bought, what lies on the shelf, its lot and a note (job.md T1). Words are
/// kept without the spaces around them.
/// Errors: NotAllowed (a therapist's phone only), Invalid with the field named.
Outcome keepSupply(Workplace &therapist, workbench::KeptSupply supply);

/// All that is kept, by item.
Result<workbench::KeptSupplies> keptSupplies(Workplace &therapist);

} // namespace lidlark::usecase
