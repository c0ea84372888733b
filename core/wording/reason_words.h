#pragma once

#include "core/catalogue/catalogue.h"
#include "core/safety/reason.h"
#include "core/wording/sentence.h"

namespace lidlark::wording {

/// Why an activity is held back, for an adult: what it is about and who or what makes it so.
Sentence sentenceFor(const safety::Reason &reason, const catalogue::Catalogue &catalogue);

} // namespace lidlark::wording
