#include "core/sync/outbox.h"

#include "core/store/event_repository.h"
#include "core/sync/segment.h"

#include <algorithm>
#include <iterator>

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

bool isOfTrust(const Event &event)
{
    using enum journal::Kind;
    return event.kind == Member || event.kind == MemberRemoved || event.kind == Epoch;
}

/// A new key of the box's lane is first handed on under the one before, where those who remain look
/// for it. What was written meanwhile is not: somebody may just have been removed.
Outcome leadOver(Post &post, const CrewBook &book, const HeldEpoch &held,
                 const std::vector<Event> &own)
{
    if (held.epoch.lane.kind != journal::LaneKind::Box)
        return Done{};
    std::vector<Event> trust;
    std::ranges::copy_if(own, std::back_inserter(trust), isOfTrust);
    if (trust.empty())
        return Done{};
    for (const HeldEpoch *before : book.before(held.epoch.id)) {
        if (Outcome done = sealOnHand(post, *before, trust); !done)
            return done;
    }
    return Done{};
}

/// The key before this one, if all who hold it may still read the lane.
const HeldEpoch *stillSafe(const CrewBook &book, const HeldEpoch &held, Day today)
{
    const auto entitled = book.entitledTo(held.epoch.lane, held.writer, today);
    for (const HeldEpoch *before : book.before(held.epoch.id)) {
        const auto opening =
            std::ranges::find(book.openings(), before->epoch.id, &crew::Opening::id);
        const auto holders = opening->holders();
        if (std::ranges::includes(entitled, holders))
            return before;
    }
    return nullptr;
}

Result<int> sealLane(Post &post, const CrewBook &book, const HeldEpoch &held, std::uint64_t before,
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
    const HeldEpoch *older = stillSafe(book, held, today);
    const std::uint64_t early = older != nullptr ? std::min(before, last) : 0;
    const auto first = older != nullptr
                           ? sealRun(post, older->epoch, *own, *sealedUpTo + 1, early, false)
                           : Result<int>(0);
    const auto second =
        sealRun(post, held.epoch, *own, std::max(early, *sealedUpTo) + 1, last, false);
    if (!first || !second)
        return first ? second.error() : first.error();
    return *first + *second;
}

} // namespace

Result<Before> writtenUpToNow(Post &post, const CrewBook &book)
{
    Before before;
    store::EventRepository events(post.database);
    for (const Lane &lane : book.lanes()) {
        const auto last = events.lastCounter(lane, post.device.id);
        if (!last)
            return last.error();
        before[lane] = *last;
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
            sealLane(post, book, *held, upTo == before.end() ? 0 : upTo->second, today);
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
    return nullptr;
}

} // namespace lidlark::sync
