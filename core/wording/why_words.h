#pragma once

#include "core/rotation/menu.h"
#include "core/wording/sentence.h"

namespace lidlark::wording {

/// The one line of why under an offer, from the part that did most to put it there; the caution
/// that matters most is added to a new one ("New. Small parts").
Sentence sentenceFor(const rotation::Offer &offer);

/// What gave way so that there are offers at all.
Sentence sentenceFor(rotation::SideCondition condition);

} // namespace lidlark::wording
