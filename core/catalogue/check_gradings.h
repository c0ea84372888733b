#pragma once

#include "core/catalogue/activity.h"
#include "core/catalogue/findings.h"

namespace lidlark::catalogue {

/// What can be said of an activity's lines for easier and harder: no lever twice in one way, and no
/// fact of an easier line on the harder side of one of a harder line.
void checkGradings(const Activity &activity, Findings &findings);

} // namespace lidlark::catalogue
