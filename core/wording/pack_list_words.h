#pragma once

#include "core/wording/sentence.h"
#include "core/workbench/readiness.h"

namespace lidlark::wording {

/// "Pack list".
Sentence packListTitle();
/// Whose a box is that nobody has been named for: "Spare".
Sentence nobodysBox();
/// "Special: somebody else looks over each line."
Sentence specialBox();
/// "What has a tick here was in already."
Sentence tickedAlready();
/// Over squares with room for initials: "In, by whom", "Second look, by whom".
Sentence inColumn();
Sentence secondLookColumn();
/// Beside a line for initials: "Packed by".
Sentence packedByLead();
/// "for the left hand". @param hand left or right.
Sentence forHand(workbench::Hand hand);
/// "Take out again: dough.": it lies in a box, and is on its list no more.
Sentence takeOutAgain(const Argument &name);
/// What the second of two squares is for.
Sentence twoSquares();
/// "No box of this build waits to be packed."
Sentence nothingToPack();

} // namespace lidlark::wording
