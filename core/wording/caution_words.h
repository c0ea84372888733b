#pragma once

#include "core/catalogue/activity.h"
#include "core/wording/sentence.h"

#include <string>
#include <vector>

namespace lidlark::wording {

/// "Right beside Fin, hand within touch.": who sits where, first of all.
Sentence supervisionLead(catalogue::Supervision supervision, const std::string &childAlias);
/// "Right beside", "Arm's reach", "Same room": the band on an offer.
Sentence supervisionShort(catalogue::Supervision supervision);

/// The cautions of what may be played here: the most serious, the first stop line of the activity,
/// then all the others, most serious first, and the last stop line. Callers show the first two or
/// three (look.md 7: "what and when to stop") and let the rest be opened.
std::vector<Sentence> cautionsFor(catalogue::TagSet cautions, const catalogue::Activity &activity);

/// "Follow your local rules and your therapist."
Sentence closingLine();

} // namespace lidlark::wording
