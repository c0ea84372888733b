#pragma once

#include "core/usecase/caseload.h"
#include "core/usecase/coaching.h"
#include "core/usecase/restock_round.h"
#include "core/usecase/revise_box.h"
#include "core/usecase/use_cost.h"
#include "core/usecase/weigh_revision.h"
#include "mobile/bridge/household.h"

namespace lidlark::mobile {

/// What the Workbench's pages ask of the store on the table.

Result<std::vector<usecase::BoxHealth>> caseloadOn(Household &household);
/// Of the child whose box the screens are about.
Result<usecase::BoxHealth> boxHealth(Household &household);
Result<usecase::RevisionWeighed> weigh(Household &household, const std::map<ItemId, int> &packed);
Outcome revise(Household &household, const std::map<ItemId, int> &packed, const QString &why);
/// The tags of what must not go into that child's box.
catalogue::TagSet avoidedThere(Household &household);

Result<std::vector<bool>> coachingTicks(Household &household);
Outcome tickCoaching(Household &household, int line, bool done);

Result<usecase::RestockRound> roundOf(Household &household);
Outcome packFor(Household &household, const QString &child, const ItemId &item);
Outcome goBy(Household &household, const QString &child, usecase::Way way);
Outcome sendOff(Household &household, const QString &child);

/// What an activity-use has cost (job.md T20).
Result<usecase::UseCost> useCostOf(Household &household);

} // namespace lidlark::mobile
