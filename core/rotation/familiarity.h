#pragma once

#include "core/rotation/menu.h"

namespace lidlark::rotation {

/// @returns an empty record for an activity that this child's past does not name.
const Record &recordOf(const Question &question, const ActivityId &activity);

/// Never played by this child.
bool isNew(const Record &record);

/// Something already enjoyed: played, and then asked for again, made a favourite, or played a
/// second time.
bool isKnownFriend(const Record &record);

} // namespace lidlark::rotation
