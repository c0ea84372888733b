#include "core/sync/hand_on.h"

#include "core/crew/rights.h"
#include "core/store/event_repository.h"
#include "core/sync/outbox.h"

#include <algorithm>
#include <iterator>

namespace lidlark::sync {

namespace {

using journal::Event;

std::string askedKey(const std::string &box)
{
    return "sync.hand-on." + box;
}

/// What nobody else would bring: of devices that were never let in, and what this phone had written
/// under the id it had before. All of that: a store that was set back has given numbers a second
/// time, so that none tells what was shared; what was is known by its identity.
Outcome handOn(Post &post, const CrewBook &book, const HeldEpoch &held,
               const std::vector<Event> &all)
{
    if (book.me() == nullptr)
        return Done{};
    const DeviceId former = book.me()->was;
    // Nobody takes the words of others from a phone that may not vouch for them (fetch.cpp).
    const bool vouches = crew::vouches(*book.me());
    const bool speaksForFormer = crew::mayHandOn(book.crew(), *book.me(), former);
    std::vector<Event> events;
    std::ranges::copy_if(all, std::back_inserter(events), [&](const Event &event) {
        const bool stray = vouches && book.crew().member(event.device) == nullptr;
        const bool own = speaksForFormer && event.device == former;
        return event.lane == held.epoch.lane && event.device != post.device.id && (stray || own);
    });
    return events.empty() ? Outcome(Done{}) : sealOnHand(post, held, events);
}

} // namespace

Outcome askToHandOn(Post &post, const std::string &box)
{
    return store::DeviceRepository(post.database).setLocalState(askedKey(box), "asked");
}

Outcome handOnIfAsked(Post &post, const CrewBook &book)
{
    Result<store::Transaction> transaction = store::Transaction::begin(post.database);
    if (!transaction)
        return transaction.error();
    store::DeviceRepository local(post.database);
    const auto asked = local.localState(askedKey(book.box()));
    if (!asked || !*asked || book.held().empty())
        return asked ? Outcome(Done{}) : Outcome(asked.error());
    const auto all = store::EventRepository(post.database).all();
    if (!all)
        return all.error();
    for (const HeldEpoch &held : book.held()) {
        // Under the last key alone: those who hold an older one hold it too, or are no more in.
        if (!held.writer.empty() || !book.after(held.epoch.id).empty())
            continue;
        if (Outcome done = handOn(post, book, held, *all); !done)
            return done;
    }
    if (Outcome done = local.clearLocalState(askedKey(book.box())); !done)
        return done;
    return transaction->commit();
}

} // namespace lidlark::sync
