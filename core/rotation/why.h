#pragma once

#include "core/rotation/candidate.h"
#include "core/rotation/menu.h"

namespace lidlark::rotation {

inline constexpr std::size_t mostWhys = 3;

/// One to three reasons, from the parts that put the offer there: Goal first when it is linked,
/// then by tenths, then in the order of the enumeration. An entry never played is New, not one that
/// was not played for long. A life word that is on (no table, quiet) is a reason too; when nothing
/// else speaks for the offer, AllHere does.
/// @param facts worth, coverage and isNew are read.
std::vector<WhyCode> whyOf(const OfferFacts &facts, const Candidate &candidate,
                           const Question &question);

} // namespace lidlark::rotation
