#pragma once

#include "core/store/event_repository.h"
#include "core/sync/chain.h"
#include "core/sync/fetch.h"

#include <span>

namespace lidlark::sync {

/// Whose events of which lane.
struct Writing {
    DeviceId device;
    journal::Lane lane;
};

/// How a segment stands whose counters lie before some that are here: its key came later than
/// theirs. Where its events were missing, it is the one that was waited for; where others stand in
/// their places, the phone was copied.
/// @param caught in this look, and not applied yet.
Result<Standing> standingInGap(store::EventRepository &events, const Segment &segment,
                               const Writing &whose, std::span<const Fetched> caught);

} // namespace lidlark::sync
