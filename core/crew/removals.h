#pragma once

#include "core/crew/member.h"
#include "core/journal/seen.h"

#include <set>
#include <vector>

namespace lidlark::crew {

/// A removal as it was written.
struct WrittenRemoval {
    const journal::Event *event;
    Removal removal;
    std::set<DeviceId> others = {}; ///< Who would never have been let in, if it stands.
    bool passedOn = false;          ///< Somebody else, of neither side, has said it too.
};

/// The removals that stand among @p removals, all of which their writers had the right to write.
/// One falls when its own writer was removed by one that stands and is seen by it, or accepts less
/// than it; or was let in by nobody but whom such a one removed before. Where they would fall in a
/// circle, all of the circle stand, and what they void falls. One that was passed on does not fall
/// to the answer of whom it removes: that was heard later.
std::vector<WrittenRemoval> standingRemovals(const std::vector<WrittenRemoval> &removals,
                                             const journal::Seen &seen);

} // namespace lidlark::crew
