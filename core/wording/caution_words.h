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

/// The cautions of what may be played here, most serious first; the stop line of the activity
/// comes last. Callers show the first three and let the rest be opened.
std::vector<Sentence> cautionsFor(catalogue::TagSet cautions, const catalogue::Activity &activity);

/// The words a regulation prescribes for these tags, exactly, in the order of precedence of
/// safety.md 2 (balloon words, then small parts).
/// Source: 16 CFR 1500.19(b)(1), (b)(2) (United States); EN 71-1 and Directive 2009/48/EC for the
/// balloon words of Europe, which prescribe no sentence for small parts from three years up.
std::vector<std::string> labelWords(catalogue::TagSet tags, Region region);

/// "Follow your local rules and your therapist."
Sentence closingLine();

} // namespace lidlark::wording
