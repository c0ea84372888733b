#pragma once

#include "core/box/freshness.h"
#include "core/wording/sentence.h"

#include <string>
#include <vector>

namespace lidlark::wording {

/// How one piece of a perishable stands: "Opened on 4 January.", "Left open twice.", "Use it by 3
/// February."
std::vector<Sentence> pieceWords(const box::PieceFreshness &piece, Day today);

/// "Looked at on Monday."; never looked at: nothing.
std::vector<Sentence> lookWords(const box::Freshness &freshness, Day today);

/// What is looked over before play: "Stretchy bands: hold them up to the light."
Sentence lookFirstWords(const Argument &name, const Argument &check);

/// "In a mouth on Monday evening, says Ruth."
Sentence mouthedWords(const box::ItemCare &care, DayPart now);

/// What to do with what was in a mouth. Source: Caring for Our Children 3.3.0.2 and 3.3.0.3, as in
/// safety.md HY-01.
/// @param cleanable it can be washed and made clean.
std::vector<Sentence> afterMouthWords(bool cleanable);

} // namespace lidlark::wording
