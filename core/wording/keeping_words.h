#pragma once

#include "core/catalogue/item_kind.h"
#include "core/wording/sentence.h"

#include <string_view>
#include <vector>

namespace lidlark::wording {

/// How long a piece keeps and how it is looked after, a sentence each: "Thrown away 7 days after it
/// was opened." Where nothing is limited, one sentence says so.
std::vector<Sentence> keepingWords(const catalogue::Life &life);

/// Whether it can be washed, and what that means once it was in a mouth (safety.md HY-01).
Sentence washingWords(bool cleanable);

/// "latex": what an item's file names as an allergen.
Sentence allergenWord(std::string_view allergen);

} // namespace lidlark::wording
