#pragma once

#include "core/catalogue/review.h"
#include "core/wording/sentence.h"

namespace lidlark::wording {

/// What a family is told about who has checked the words it reads: at first run, in the settings
/// and on whatever is printed (activities.md 1.1). Empty once every entry has been.
Sentence reviewNotice(const catalogue::ReviewCount &count);

/// The same for one text that stands by itself, such as the card of the kite.
Sentence notYetChecked();

} // namespace lidlark::wording
