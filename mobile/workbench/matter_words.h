#pragma once

#include <QStringList>

#include "core/wording/caseload_words.h"
#include "mobile/bridge/household.h"
#include "mobile/bridge/workbench_desk.h"

namespace lidlark::mobile {

/// What waits for the one who packs, in words.

/// The columns in which a box stands, in the order of the board.
std::vector<wording::BoxMatter> mattersOf(const usecase::BoxHealth &health);
/// A line each; none: the box does not stand in that column.
QStringList linesOf(const Household &household, const usecase::BoxHealth &health,
                    wording::BoxMatter matter);
/// Sent, received by whom, what is still to be taken out, what is on the way.
QStringList revisionLines(const Household &household, const usecase::RevisionState &state);

} // namespace lidlark::mobile
