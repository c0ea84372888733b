#include "core/sync/clear_away.h"

#include "core/store/event_repository.h"
#include "core/store/segment_repository.h"
#include "core/sync/carry.h"
#include "core/sync/handed_on.h"
#include "core/sync/outbox.h"

#include <algorithm>

namespace lidlark::sync {

namespace {

using journal::Lane;

std::string toldKey(const std::string &box, const Lane &lane)
{
    return "sync.gone." + box + "." + toText(lane);
}

/// Whether anything in a lane has gone since this was asked last; and keeps that it was asked.
Result<bool> somethingWent(Post &post, const CrewBook &book, const Lane &lane)
{
    const auto gone = store::EventRepository(post.database).goneIn(lane);
    store::DeviceRepository local(post.database);
    const auto told = local.localState(toldKey(book.box(), lane));
    if (!gone || !told)
        return gone ? told.error() : gone.error();
    const std::string now = std::to_string(*gone);
    if (now == told->value_or("0"))
        return false;
    if (const Outcome kept = local.setLocalState(toldKey(book.box(), lane), now); !kept)
        return kept.error();
    return true;
}

/// Seals anew what this phone has said and handed on in a lane, without what is gone.
Outcome tellAnew(Post &post, const CrewBook &book, const HeldEpoch &held, const HandedOn &handed)
{
    const Lane &lane = held.epoch.lane;
    Outcome done =
        store::SegmentRepository(post.database).supersede(book.box(), lane, post.device.id);
    if (!done)
        return done;
    if (const auto told = tellAgain(post, book, held); !told)
        return told.error();
    return sealOnHand(post, held, handed.still);
}

/// Whether anything of what this phone itself has sealed of a lane is gone.
Result<bool> ownWent(Post &post, const CrewBook &book, const Lane &lane)
{
    const auto sealedUpTo =
        store::SegmentRepository(post.database).lastCounter(book.box(), lane, post.device.id);
    const auto own =
        sealedUpTo
            ? store::EventRepository(post.database).goneUpTo(lane, post.device.id, *sealedUpTo)
            : Result<std::int64_t>(sealedUpTo.error());
    return own ? Result<bool>(*own > 0) : own.error();
}

Outcome tellLane(Post &post, const CrewBook &book, const HeldEpoch &held)
{
    const Lane &lane = held.epoch.lane;
    const auto went = somethingWent(post, book, lane);
    if (!went || !*went)
        return went ? Outcome(Done{}) : Outcome(went.error());
    const auto carried = carriedIn(post, book, lane);
    const auto handed = handedOnIn(post, book, lane);
    const auto own = ownWent(post, book, lane);
    if (!carried || !handed || !own)
        return !carried ? carried.error() : handed ? own.error() : handed.error();
    store::SegmentRepository segments(post.database);
    Outcome done = segments.forgetBytes(book.box(), lane, post.device.id);
    if (done && (*own || handed->somethingWent))
        done = tellAnew(post, book, held, *handed);
    return done ? sealOnHand(post, held, *carried) : done;
}

/// What was handed to a guest whose time is over is for nobody any more.
Outcome endCopies(Post &post, const CrewBook &book, Day today)
{
    for (const crew::Opening &opening : book.openings()) {
        if (opening.writer != post.device.id || opening.by != post.device.id)
            continue;
        const auto still = book.entitledTo({journal::LaneKind::Box, book.box()}, {}, today);
        const auto holders = opening.holders();
        if (std::ranges::includes(still, holders))
            continue;
        Outcome done =
            store::SegmentRepository(post.database).supersede(opening.id, post.device.id);
        if (!done)
            return done;
    }
    return Done{};
}

} // namespace

Outcome tellErasedAgain(Post &post, const CrewBook &book, Day today)
{
    Result<store::Transaction> transaction = store::Transaction::begin(post.database);
    if (!transaction)
        return transaction.error();
    for (const Lane &lane : book.lanes()) {
        const HeldEpoch *held = writingEpoch(post, book, lane, today);
        if (held == nullptr)
            continue;
        if (Outcome done = tellLane(post, book, *held); !done)
            return done;
    }
    if (Outcome done = endCopies(post, book, today); !done)
        return done;
    return transaction->commit();
}

Result<std::optional<Trouble>> clearAway(Post &post, const CrewBook &book, Storage &storage)
{
    std::optional<Trouble> trouble;
    store::SegmentRepository segments(post.database);
    const auto waiting = segments.waiting(book.box(), post.device.id);
    const auto old = segments.toTakeOff(book.box(), post.device.id);
    if (!waiting || !old)
        return waiting ? old.error() : waiting.error();
    if (std::ranges::any_of(*waiting, [&book](const store::SegmentRow &row) {
            return book.held(row.epoch) != nullptr;
        }))
        return trouble; // first what replaces it
    for (const store::SegmentRow &row : *old) {
        const HeldEpoch *held = book.held(row.epoch);
        if (held == nullptr)
            continue;
        trouble = troubleIn(storage.remove({folderName(held->epoch, row.device),
                                            segmentName(held->epoch, row.device, row.sequence)}));
        if (trouble)
            break;
        if (const Outcome done = segments.takenOff(row); !done)
            return done.error();
    }
    return trouble;
}

} // namespace lidlark::sync
