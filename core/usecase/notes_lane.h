#pragma once

#include "core/journal/lane.h"
#include "core/store/device_repository.h"

namespace lidlark::usecase {

/// The lane of a person's own notes: the same on all of that person's devices of one home, nobody
/// else's. Its name tells no name.
journal::Lane notesLaneOf(const store::Device &device);

} // namespace lidlark::usecase
