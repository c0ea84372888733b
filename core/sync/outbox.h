#pragma once

#include "core/store/segment_repository.h"
#include "core/sync/crew_book.h"

#include <cstdint>
#include <map>
#include <span>

namespace lidlark::sync {

/// By lane, the last of its events that this phone had written before it learned of newcomers.
using Before = std::map<journal::Lane, std::uint64_t>;

/// As far as it has written now.
Result<Before> writtenUpToNow(Post &post, const CrewBook &book);

/// Seals what this phone has written and not sealed yet, into segments that wait to be brought to a
/// storage: each lane under the epoch in force, and nothing while there is none for just those who
/// may read it. In one transaction. Sealed bytes stay: a second sealing would have another nonce.
/// @param before what goes under the key before, when newcomers are all that has changed: what was
/// written before a guest came is not for the guest.
/// @returns how many segments were sealed.
Result<int> sealWaiting(Post &post, const CrewBook &book, Day today, const Before &before = {});

/// The epoch this phone writes @p lane under; null where it must wait, or has no part in it.
const HeldEpoch *writingEpoch(const Post &post, const CrewBook &book, const journal::Lane &lane,
                              Day today);

/// Seals all that this phone has shared of a lane once more, without what was erased since; inside
/// a transaction of the caller's. @returns how many segments were sealed.
Result<int> tellAgain(Post &post, const CrewBook &book, const HeldEpoch &held);

/// Seals events of anybody, as they are, under one epoch; inside a transaction of the caller's.
Outcome sealOnHand(Post &post, const HeldEpoch &held, std::span<const journal::Event> events);

} // namespace lidlark::sync
