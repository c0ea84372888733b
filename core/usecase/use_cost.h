#pragma once

#include "core/usecase/workplace.h"
#include "core/workbench/cost_per_use.h"

#include <string>

namespace lidlark::usecase {

/// What an activity-use has cost, for a grant report (job.md T20): of the boxes that are with
/// families, whose cost a build tells, and with which at least one play was shared in that time. It
/// knows nothing of plays that were not shared.
struct UseCost {
    Day since; ///< Plays are kept for twelve months (keep_limits.h), so from then on.
    Day until;
    std::optional<workbench::CostPerUse> cost; ///< Nothing: too few boxes to tell.
    std::string currency = "GBP";
    /// Boxes that would count, and do not: a price is missing, it is in another currency, or no
    /// build tells what lies in it. Told only beside a cost.
    int leftOut = 0;
};

/// Errors: NotAllowed (not a therapist's phone), ClockUnset.
Result<UseCost> useCost(Workplace &therapist);

} // namespace lidlark::usecase
