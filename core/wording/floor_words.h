#pragma once

#include "core/wording/sentence.h"

#include <string>

namespace lidlark::wording {

/// "Two stick-on eyes are missing." (job.md scenario 5).
/// @param one,name of the item as in the catalogue: "stick-on eye", "stick-on eyes".
Sentence piecesMissing(int pieces, const Argument &one, const Argument &name);
/// Several kinds of thing at once: "Three small pieces are missing."
Sentence smallPiecesMissing(int pieces);
/// "Two missing", beside the picture of what it is.
Sentence missingWords(int pieces);
/// A burst balloon: what is missing are pieces of it, however many (scenario 2).
Sentence balloonPiecesMissing(int balloons);

/// "First look at each child's hands and mouth." Source: safety.md SP-06.
Sentence lookAtHandsFirst();
/// "Look now: table, floor, clothes, dough."; after a burst, under the chairs instead.
Sentence lookNow(bool balloon);
/// "Keep Mirren and Jamie away until found."
/// @param aliases empty: "Keep small children away until found."
Sentence keepAway(const std::vector<std::string> &aliases);

} // namespace lidlark::wording
