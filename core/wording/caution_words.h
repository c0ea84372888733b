#pragma once

#include "core/catalogue/activity.h"
#include "core/wording/sentence.h"

#include <string>
#include <vector>

namespace lidlark::wording {

/// Whose label words are shown.
enum class Region { UnitedStates, Europe };

/// "Right beside Fin, hand within touch.": who sits where, first of all.
Sentence supervisionLead(catalogue::Supervision supervision, const std::string &childAlias);
/// "Right beside", "Arm's reach", "Same room": the band on an offer.
Sentence supervisionShort(catalogue::Supervision supervision);

/// The cautions of what may be played here: the most serious, the first stop line of the activity,
/// then all the others, most serious first, and the last stop line. Callers show the first two or
/// three (look.md 7: "what and when to stop") and let the rest be opened.
std::vector<Sentence> cautionsFor(catalogue::TagSet cautions, const catalogue::Activity &activity);

/// The words a regulation prescribes for these tags, exactly, in the order of precedence of
/// safety.md 2 (balloon words, then small parts).
/// Source: safety.md 2, rows L-1 and L-2 (16 CFR 1500.19(b), as reproduced in ONIX code list 143;
/// the paragraph itself was not reached) and L-7 (balloon words of the EU, Eurofins page). That
/// Europe prescribes no sentence for small parts from three years up is from memory.
std::vector<std::string> labelWords(catalogue::TagSet tags, Region region);

/// "Follow your local rules and your therapist."
Sentence closingLine();

} // namespace lidlark::wording
