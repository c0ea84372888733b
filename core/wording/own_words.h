#pragma once

#include "core/catalogue/catalogue.h"
#include "core/catalogue/lint.h"
#include "core/wording/sentence.h"

#include <string>

namespace lidlark::wording {

/// What the loader wants of an own entry, for its writer: "Write at least one line that makes it
/// easier." What no sentence was written for stands as the loader says it.
Sentence ownFindingWords(const catalogue::Problem &problem);
/// What a rule of writing wants, without naming the line: for languages in which the lint's own
/// words do not stand.
Sentence ownRuleWords(catalogue::LintRule rule);

/// "Written by Morven, not yet checked by a clinician.": below an own activity, in the family's
/// app.
Sentence writtenByWords(const std::string &writer);

/// "From three years on", "From two and a half years on".
Sentence fromAgeWords(int months);

} // namespace lidlark::wording
