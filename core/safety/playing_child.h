#pragma once

#include "core/child/home_sheet.h"

namespace lidlark::safety {

/// The playing child as a person of the room: what the home sheet says of this child, with the
/// youngest age that the sheet or the child's own record allows. An age that the child's own record
/// lacks stays unknown (activities.md 2.1.1).
/// @param home null: no home sheet.
child::Person playingChild(const child::HomeSheet *home, const child::Child &playing);

} // namespace lidlark::safety
