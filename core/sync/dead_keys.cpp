#include "core/sync/dead_keys.h"

#include "core/sync/outbox.h"

#include <algorithm>

namespace lidlark::sync {

namespace {

Outcome tellLane(Post &post, const CrewBook &book, const HeldEpoch &held)
{
    store::SegmentRepository segments(post.database);
    const auto epochs = segments.epochsOf(book.box(), held.epoch.lane, post.device.id);
    if (!epochs)
        return epochs.error();
    bool any = false;
    for (const Digest &epoch : *epochs) {
        if (std::ranges::find(book.openings(), epoch, &crew::Opening::id) != book.openings().end())
            continue;
        any = true;
        if (Outcome done = segments.supersede(epoch, post.device.id); !done)
            return done;
    }
    if (!any)
        return Done{};
    const auto told = tellAgain(post, book, held);
    return told ? Outcome(Done{}) : Outcome(told.error());
}

} // namespace

Outcome tellAgainFromDeadKeys(Post &post, const CrewBook &book, Day today)
{
    Result<store::Transaction> transaction = store::Transaction::begin(post.database);
    if (!transaction)
        return transaction.error();
    for (const journal::Lane &lane : book.lanes()) {
        const HeldEpoch *held = writingEpoch(post, book, lane, today);
        if (held == nullptr)
            continue;
        if (Outcome done = tellLane(post, book, *held); !done)
            return done;
    }
    return transaction->commit();
}

} // namespace lidlark::sync
