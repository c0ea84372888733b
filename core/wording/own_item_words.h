#pragma once

#include "core/catalogue/catalogue.h"
#include "core/wording/sentence.h"

namespace lidlark::wording {

/// What the loader wants of a thing of the therapist's own, for its writer: "Say how large one
/// piece is, or that it is soft." What no sentence was written for stands as the loader says it.
Sentence ownItemFindingWords(const catalogue::Problem &problem);

/// What never goes into a box: "A magnet".
English bannedWord(catalogue::Banned thing);

} // namespace lidlark::wording
