#pragma once

#include "core/store/segment_repository.h"
#include "core/sync/crew_book.h"

#include <cstdint>
#include <map>
#include <span>

namespace lidlark::sync {

/// How far this phone had written in a lane, and under which key, before it learned of newcomers.
struct Reach {
    std::uint64_t counter = 0;
    Digest epoch{};
};
using Before = std::map<journal::Lane, Reach>;

/// As far as it has written now.
Result<Before> writtenUpToNow(Post &post, const CrewBook &book, Day today);

/// Seals what this phone has written and not sealed yet, into segments that wait to be brought to a
/// storage: each lane under the epoch in force, and nothing while there is none for just those who
/// may read it. In one transaction. Sealed bytes stay: a second sealing would have another nonce.
/// @param before goes under the key of that time, when newcomers are all that has changed since:
/// what was written before a guest came is not for the guest.
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
