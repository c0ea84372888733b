#include "core/sync/parting.h"

#include "core/store/event_repository.h"
#include "core/sync/leave.h"
#include "core/sync/outbox.h"

#include <algorithm>

namespace lidlark::sync {

namespace {

using journal::Event;

/// The last of its words of that kind that was sealed after it was out.
std::string saidKey(const std::string &box)
{
    return "sync.parting." + box;
}

bool isRemovalBy(const Event &event, const DeviceId &writer)
{
    const auto removal = crew::readRemoval(event);
    return removal && event.device == writer && removal->device != writer;
}

Outcome sealUnder(Post &post, const CrewBook &book, const std::vector<Event> &words)
{
    for (const HeldEpoch &held : book.held()) {
        const bool last = held.epoch.lane.kind == journal::LaneKind::Box && held.writer.empty() &&
                          held.writers.contains(post.device.id) &&
                          book.after(held.epoch.id).empty();
        if (!last)
            continue;
        if (Outcome done = sealOnHand(post, held, words); !done)
            return done;
    }
    return Done{};
}

} // namespace

Result<bool> hasPartingWords(Post &post, const CrewBook &book)
{
    const auto left = hasLeft(post, book.box());
    if (!left || *left)
        return left;
    Result<store::Transaction> transaction = store::Transaction::begin(post.database);
    if (!transaction)
        return transaction.error();
    const journal::Lane lane{journal::LaneKind::Box, book.box()};
    auto words = store::EventRepository(post.database).ofSubject({lane, "members"});
    store::DeviceRepository local(post.database);
    const auto said = local.localNumber(saidKey(book.box()));
    const auto sealed =
        store::SegmentRepository(post.database).lastCounter(book.box(), lane, post.device.id);
    if (!words || !said || !sealed)
        return !words ? words.error() : !said ? said.error() : sealed.error();
    const std::uint64_t accepted = book.crew().acceptedUpTo(post.device.id, lane);
    std::erase_if(*words, [&](const Event &event) {
        return !isRemovalBy(event, post.device.id) || event.counter <= accepted;
    });
    if (words->empty())
        return false;
    const std::uint64_t upTo = std::max(static_cast<std::uint64_t>(*said), *sealed);
    std::erase_if(*words, [upTo](const Event &event) { return event.counter <= upTo; });
    if (words->empty())
        return true;
    const std::uint64_t last = std::ranges::max(*words, {}, &Event::counter).counter;
    Outcome done = sealUnder(post, book, *words);
    if (done)
        done = local.setLocalState(saidKey(book.box()), std::to_string(last));
    if (done)
        done = transaction->commit();
    return done ? Result<bool>(true) : done.error();
}

} // namespace lidlark::sync
