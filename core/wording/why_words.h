#pragma once

#include "core/rotation/menu.h"
#include "core/wording/sentence.h"

#include <span>
#include <vector>

namespace lidlark::wording {

/// The one line of why under each offer, from the part that did most to put it there; the caution
/// that matters most is added to a new one ("New. Small parts"). Where an offer above has said the
/// same already, the next reason speaks, so that three offers do not say one thing three times.
/// @returns a sentence for each offer, in their order.
std::vector<Sentence> whyLines(std::span<const rotation::Offer> offers);

/// What gave way so that there are offers at all.
Sentence sentenceFor(rotation::SideCondition condition);

} // namespace lidlark::wording
