#pragma once

#include <QStringList>

#include "mobile/bridge/household.h"

namespace lidlark::mobile {

/// What the homes of the child on the table share of their plays in the last weeks: each activity
/// once, by name, with what was noticed; no day, no count, no order that would tell the last one
/// (job.md T16). Empty where nothing is shared.
QStringList sharedLines(Household &household);

} // namespace lidlark::mobile
