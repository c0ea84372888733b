#pragma once

#include "core/play/sharing.h"
#include "core/store/recording.h"

namespace lidlark::store {

/// What a home has said of sharing what is played with @p child; nothing: nobody has said.
Result<std::optional<play::Sharing>> sharingIn(Database &database, const HomeId &home,
                                               const ChildId &child);

/// Brings the copies of this phone's home (journal::sharedPlaysOf) to what its plays and its word
/// on sharing say now, inside @p recording: what is missing is copied, and what is shared no more,
/// was taken back or is gone is erased there. The same from whichever phone of the home, and from
/// several at once: a copy's id follows from its play's. A phone without a home, or a guest's, has
/// no part in it.
/// @returns whether anything was said.
Result<bool> keepCopies(Recording &recording, Database &database, const Device &device,
                        const Clock &clock);

/// The copies this store holds of one child's plays, of every home that shares them, latest first:
/// day and part of day are as the family's, the moment is made up.
Result<std::vector<play::Play>> sharedPlays(Database &database, const ChildId &child, Day since);

} // namespace lidlark::store
