#include "core/sync/outbox.h"

#include "core/store/event_repository.h"
#include "core/sync/lead_over.h"
#include "core/sync/segment.h"

#include <algorithm>

namespace lidlark::sync {

namespace {

using journal::Event;
using journal::Lane;

constexpr std::size_t eventsInSegment = 500; ///< About 30 kB sealed.

/// Where this phone's chain in one epoch goes on.
Result<Link> linkAfter(Post &post, const Digest &epoch)
{
    const auto chain = store::SegmentRepository(post.database).chainOf(epoch, post.device.id);
    if (!chain)
        return chain.error();
    if (chain->empty())
        return Link{};
    return Link{chain->back().sequence + 1, chain->back().hash};
}

Outcome keep(Post &post, const Epoch &epoch, const Link &link, std::uint64_t lastCounter,
             std::string bytes)
{
    const Digest hash = blake2b(bytes);
    return store::SegmentRepository(post.database)
        .keep({epoch.id, post.device.id, link.sequence, epoch.crew, epoch.lane, hash, lastCounter,
               std::nullopt, std::move(bytes)});
}

/// The part of a run with counters in [first, first + most).
Run partOf(const store::OwnRun &own, const DeviceId &device, std::uint64_t first,
           std::uint64_t most, bool again)
{
    const auto within = [first, most](const auto &all) {
        using Entry = typename std::decay_t<decltype(all)>::value_type;
        const auto from = std::ranges::lower_bound(all, first, {}, &Entry::counter);
        const auto to = std::ranges::lower_bound(all, first + most, {}, &Entry::counter);
        return std::span<const Entry>(from, to);
    };
    return {device, within(own.events), within(own.gone), again};
}

std::uint64_t lastOf(const store::OwnRun &own)
{
    const std::uint64_t event = own.events.empty() ? 0 : own.events.back().counter;
    return std::max(event, own.gone.empty() ? 0 : own.gone.back().counter);
}

/// Counters from @p first to @p last, in as many segments as it takes. @returns how many.
Result<int> sealRun(Post &post, const Epoch &epoch, const store::OwnRun &own, std::uint64_t first,
                    std::uint64_t last, bool again)
{
    int sealedCount = 0;
    std::uint64_t most = eventsInSegment;
    while (first <= last) {
        const auto link = linkAfter(post, epoch.id);
        if (!link)
            return link.error();
        const std::uint64_t size = std::min(most, last - first + 1);
        auto bytes = sealSegment(epoch, *link, partOf(own, post.device.id, first, size, again),
                                 crypto::signingSeedOf(post.secret), freshNonce(post.entropy));
        if (!bytes && size == 1)
            return Error{ErrorCode::Invalid, "event: too large to be shared"};
        if (!bytes) {
            most = size / 2;
            continue;
        }
        if (Outcome done = keep(post, epoch, *link, first + size - 1, *std::move(bytes)); !done)
            return done.error();
        first += size;
        ++sealedCount;
    }
    return sealedCount;
}

/// The key of that time, if it was another and all who hold it may still read the lane.
const HeldEpoch *stillSafe(const CrewBook &book, const HeldEpoch &held, const Digest &then,
                           Day today)
{
    const HeldEpoch *before = book.held(then);
    if (before == nullptr || !crew::follows(held.epoch.id, then, book.openings()))
        return nullptr;
    const auto entitled = book.entitledTo(held.epoch.lane, held.writer, today);
    const auto opening = std::ranges::find(book.openings(), then, &crew::Opening::id);
    return std::ranges::includes(entitled, opening->holders()) ? before : nullptr;
}

Result<int> sealLane(Post &post, const CrewBook &book, const HeldEpoch &held, const Reach &before,
                     Day today)
{
    const Lane &lane = held.epoch.lane;
    const auto sealedUpTo =
        store::SegmentRepository(post.database).lastCounter(book.box(), lane, post.device.id);
    if (!sealedUpTo)
        return sealedUpTo.error();
    const auto own =
        store::EventRepository(post.database).ofDeviceAfter(lane, post.device.id, *sealedUpTo);
    if (!own)
        return own.error();
    if (const Outcome done = leadOver(post, book, held, own->events); !done)
        return done.error();
    const std::uint64_t last = lastOf(*own);
    const auto link = linkAfter(post, held.epoch.id);
    if (!link)
        return link.error();
    // Who has written under the new key is looked for under the one before no more.
    const bool movedOn = link->sequence > 1;
    const HeldEpoch *older = movedOn ? nullptr : stillSafe(book, held, before.epoch, today);
    const std::uint64_t early = older != nullptr ? std::min(before.counter, last) : 0;
    const auto first = older != nullptr
                           ? sealRun(post, older->epoch, *own, *sealedUpTo + 1, early, false)
                           : Result<int>(0);
    const auto second =
        sealRun(post, held.epoch, *own, std::max(early, *sealedUpTo) + 1, last, false);
    if (!first || !second)
        return first ? second.error() : first.error();
    return *first + *second;
}

/// What a guest has noted in time is for the crew, also where it comes late: under the last key
/// that the guest was given.
const HeldEpoch *lastGiven(const CrewBook &book, const Lane &lane, const DeviceId &guest)
{
    const HeldEpoch *last = nullptr;
    for (const HeldEpoch &held : book.held()) {
        if (held.epoch.lane == lane && held.writers.contains(guest) &&
            book.after(held.epoch.id).empty() &&
            (last == nullptr || held.epoch.id < last->epoch.id))
            last = &held;
    }
    return last;
}

} // namespace

Result<Before> writtenUpToNow(Post &post, const CrewBook &book, Day today)
{
    Before before;
    store::EventRepository events(post.database);
    for (const Lane &lane : book.lanes()) {
        const HeldEpoch *held = writingEpoch(post, book, lane, today);
        if (held == nullptr)
            continue;
        const auto last = events.lastCounter(lane, post.device.id);
        if (!last)
            return last.error();
        before[lane] = {*last, held->epoch.id};
    }
    return before;
}

Result<int> sealWaiting(Post &post, const CrewBook &book, Day today, const Before &before)
{
    int sealedCount = 0;
    if (book.me() == nullptr)
        return sealedCount;
    Result<store::Transaction> transaction = store::Transaction::begin(post.database);
    if (!transaction)
        return transaction.error();
    for (const Lane &lane : book.lanes()) {
        const HeldEpoch *held = writingEpoch(post, book, lane, today);
        if (held == nullptr)
            continue;
        const auto upTo = before.find(lane);
        const auto count =
            sealLane(post, book, *held, upTo == before.end() ? Reach{} : upTo->second, today);
        if (!count)
            return count.error();
        sealedCount += *count;
    }
    if (const Outcome done = transaction->commit(); !done)
        return done.error();
    return sealedCount;
}

Outcome sealOnHand(Post &post, const HeldEpoch &held, std::span<const Event> events)
{
    const auto link = linkAfter(post, held.epoch.id);
    const auto last = store::SegmentRepository(post.database)
                          .lastCounter(held.epoch.crew, held.epoch.lane, post.device.id);
    if (!link || !last)
        return link ? last.error() : link.error();
    auto bytes = sealHandedOn(held.epoch, *link, post.device.id, *last + 1, events,
                              crypto::signingSeedOf(post.secret), freshNonce(post.entropy));
    if (!bytes && events.size() < 2)
        return events.empty() ? Outcome(Done{})
                              : Outcome(Error{ErrorCode::Invalid, "event: too large to be shared"});
    if (!bytes) {
        Outcome done = sealOnHand(post, held, events.first(events.size() / 2));
        return done ? sealOnHand(post, held, events.subspan(events.size() / 2)) : done;
    }
    return keep(post, held.epoch, *link, *last, *std::move(bytes));
}

Result<int> tellAgain(Post &post, const CrewBook &book, const HeldEpoch &held)
{
    const Lane &lane = held.epoch.lane;
    const auto own = store::EventRepository(post.database).ofDeviceAfter(lane, post.device.id, 0);
    const auto sealedUpTo =
        store::SegmentRepository(post.database).lastCounter(book.box(), lane, post.device.id);
    if (!own || !sealedUpTo)
        return own ? sealedUpTo.error() : own.error();
    return sealRun(post, held.epoch, *own, 1, std::min(*sealedUpTo, lastOf(*own)), true);
}

const HeldEpoch *writingEpoch(const Post &post, const CrewBook &book, const Lane &lane, Day today)
{
    for (const DeviceId &writer : {DeviceId{}, post.device.id}) {
        const crew::InForce found = book.inForce(lane, writer, today);
        if (found.opening != nullptr && !found.renew && book.held(found.opening->id) != nullptr)
            return book.held(found.opening->id);
    }
    const crew::Member *me = book.me();
    const bool guest = me != nullptr && me->role == crew::Role::Guest;
    return guest ? lastGiven(book, lane, post.device.id) : nullptr;
}

} // namespace lidlark::sync
