#pragma once

#include "core/base/id.h"
#include "core/journal/lane.h"

#include <cstdint>
#include <vector>

namespace lidlark::sync {

/// What was met on a storage and is not applied.
enum class FindingKind {
    Damaged,  ///< Bytes that are no segment of that device: torn, changed, swapped, forged.
    Newer,    ///< Written by a later Lidlark.
    Forked,   ///< Another segment than the one that was here: its phone was copied or restored.
    Broken,   ///< It does not follow on the one before it.
    Missing,  ///< Something before it, or something others have seen, has not arrived.
    Intruder, ///< By a device that may not, or no longer.
    WentBack, ///< What this phone had brought is gone from the storage; it is brought again.
    OwnAhead  ///< The storage knows more of this phone than it does: it was copied or restored.
};

struct Finding {
    FindingKind kind = FindingKind::Damaged;
    DeviceId device; ///< Whose.
    journal::Lane lane;
    std::uint64_t sequence = 0; ///< Of the segment; 0 where it is about events.

    auto operator<=>(const Finding &) const = default;
};

using Findings = std::vector<Finding>;

} // namespace lidlark::sync
