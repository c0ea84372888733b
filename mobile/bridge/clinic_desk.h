#pragma once

#include <QString>

#include "mobile/bridge/household.h"

namespace lidlark::mobile {

/// What all pages of what the clinic keeps share: shelf, buying and packing.

/// The drawing of a thing; what the catalogue does not know is drawn as a box.
QString clinicDrawing(Household &household, const ItemId &item);

/// Tells everybody who looks that something was written, or gives the sentence why nothing was.
/// @returns empty when all is well.
QString clinicAnswer(Household &household, const Outcome &outcome);

} // namespace lidlark::mobile
