#pragma once

#include "core/store/recording.h"
#include "core/sync/crew_book.h"

namespace lidlark::sync {

/// How much of @p device is here, of each lane that this phone reads from its beginning: what a
/// removal accepts.
Result<crew::Accepted> acceptedNow(Post &post, const CrewBook &book, const DeviceId &device);

/// A removal names what is accepted of the lanes that its writer reads. Of the others, in which the
/// removed one could go on writing, whoever may remove it too says so now.
Outcome closeLanes(Post &post, const CrewBook &book, store::Recording &recording);

} // namespace lidlark::sync
