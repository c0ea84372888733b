#pragma once

#include "core/base/digest.h"
#include "core/sync/segment.h"

#include <cstdint>
#include <vector>

namespace lidlark::sync {

/// What is known of one device's segments in one lane and epoch: their hashes, without a gap, and
/// the last counter among their events.
struct Chain {
    std::uint64_t before = 0; ///< So many were gone when this one was met: it told them again.
    std::vector<Digest> hashes;
    std::uint64_t lastCounter = 0; ///< Of the device in the lane, over all epochs; 0: none yet.
};

/// How a segment stands to what is known. Only the next one is applied; a later one is parked.
enum class Standing {
    Next,       ///< The one that was waited for.
    Known,      ///< Already here, byte for byte: a repetition.
    NotYet,     ///< Later: one before it has not arrived.
    Forked,     ///< At a place that is taken by other bytes: the phone was copied or restored.
    Broken,     ///< Names another one as the one before it.
    CounterGap, ///< Its events do not follow on those before.
};

Standing standingOf(const Segment &segment, const Chain &chain);
/// The chain with its next segment.
void extend(Chain &chain, const Segment &segment);

} // namespace lidlark::sync
