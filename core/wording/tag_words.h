#pragma once

#include "core/catalogue/tag.h"
#include "core/wording/sentence.h"

namespace lidlark::wording {

/// What a tag is about, to stand in a sentence: "small parts", "a stretchy band".
English tagThing(catalogue::Tag tag);

/// What to do about it, one short sentence (activities.md 1.4, the rule column, in plain words).
English tagCaution(catalogue::Tag tag);

/// A few words for a card: "Small parts".
English tagShort(catalogue::Tag tag);

} // namespace lidlark::wording
