#pragma once

#include "core/catalogue/activity.h"
#include "core/catalogue/findings.h"

namespace lidlark::catalogue {

/// Refuses words in what the family is told to do that name something no entry of ours may do or
/// use. English, the language in which entries are written; a translation is checked against its
/// original by a person.
/// Source: activities.md 1.4, last paragraph; safety.md EL-02 (nothing is launched), CO-04 (no cord
/// across a cot or pram), MG-01, BB-01, EX-01, EO-01, PB-02, BL-05 (no helium), FD-01.
void checkMatters(const Activity &activity, Findings &findings);

} // namespace lidlark::catalogue
