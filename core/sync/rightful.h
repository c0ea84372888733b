#pragma once

#include "core/store/event_repository.h"
#include "core/store/segment_repository.h"
#include "core/sync/crew_book.h"
#include "core/sync/segment.h"

namespace lidlark::sync {

/// Who has sealed a segment, under which key, and who else is in the crew.
struct Sealing {
    const CrewBook &book;
    const Epoch &epoch;
    const crew::Member &member;
};

/// Whether a segment may be applied at all, wherever it stands: its device may hand on all that is
/// in it, and had not been removed before.
Result<bool> isRightful(store::SegmentRepository &segments, store::EventRepository &events,
                        const Segment &segment, const Sealing &sealing);

} // namespace lidlark::sync
