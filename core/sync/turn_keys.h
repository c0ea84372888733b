#pragma once

#include "core/crew/opening.h"
#include "core/store/recording.h"
#include "core/sync/crew_book.h"

namespace lidlark::sync {

/// An opening with a fresh key for @p holders, in letters.
/// @returns nothing where one of them is not in the crew.
std::optional<crew::Opening> freshOpening(const CrewBook &book, const crew::Strand &strand,
                                          const std::set<DeviceId> &holders, Entropy &entropy);

/// Opens an epoch wherever the one in force is not for just those who may read the lane today, as
/// far as this phone has the right: for newcomers, and without whoever was removed or whose week is
/// over. @returns how many were opened.
Result<int> turnKeys(const Post &post, const CrewBook &book, store::Recording &recording,
                     Day today);

/// Gives the keys that this phone holds to those who may read what lies under them and were not
/// named: whoever let them in at the same time, or from afar, did not have these. Not to guests:
/// they get what was opened for them. @returns how many keys were given.
Result<int> giveKeys(const Post &post, const CrewBook &book, store::Recording &recording,
                     Day today);

} // namespace lidlark::sync
