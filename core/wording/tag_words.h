#pragma once

#include "core/catalogue/tag.h"

#include <string_view>

namespace lidlark::wording {

/// What a tag is about, to stand in a sentence: "small parts", "a stretchy band".
std::string_view tagThing(catalogue::Tag tag);

/// What to do about it, one short sentence (activities.md 1.4, the rule column, in plain words).
std::string_view tagCaution(catalogue::Tag tag);

/// A few words for a card: "Small parts".
std::string_view tagShort(catalogue::Tag tag);

} // namespace lidlark::wording
