#pragma once

#include "core/rotation/menu.h"
#include "core/wording/sentence.h"

#include <span>
#include <vector>

namespace lidlark::wording {

/// What stands under an offer: one reason, or where an offer above names the same goal, another
/// reason and then the goal.
struct WhyLine {
    std::vector<Sentence> parts; ///< One or two.
    bool operator==(const WhyLine &) const = default;
};

/// The line of why under each offer, from the parts that did most to put it there; the caution that
/// matters most is added to a new one ("New. Small parts"). An offer that serves a goal names it in
/// the family's own words (job.md F8). Where an offer above has said the same already, a reason
/// that nobody has given yet comes first, so that three offers do not say one thing three times;
/// where there is none, what it practises.
/// @returns a line for each offer, in their order.
std::vector<WhyLine> whyLines(std::span<const rotation::Offer> offers);

/// The parts in one line: "Known from before. For opening his lunch tub".
Sentence sentenceFor(const WhyLine &line);

/// What gave way so that there are offers at all.
Sentence sentenceFor(rotation::SideCondition condition);

} // namespace lidlark::wording
