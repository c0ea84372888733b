#include "core/sync/lead_over.h"

#include "core/crew/crew_event.h"
#include "core/crew/rights.h"
#include "core/store/event_repository.h"
#include "core/sync/outbox.h"

#include <algorithm>
#include <iterator>
#include <set>

namespace lidlark::sync {

namespace {

using journal::Event;

/// The epochs where those who remain may look for a new key of the box's lane: the ones before it,
/// and where nobody knows of those yet, the ones before them.
std::set<const HeldEpoch *> lookedAt(const CrewBook &book, const Digest &epoch,
                                     const std::set<Digest> &unknown)
{
    std::set<const HeldEpoch *> around;
    for (const HeldEpoch *before : book.before(epoch)) {
        around.insert(before);
        if (unknown.contains(before->epoch.id))
            around.merge(lookedAt(book, before->epoch.id, unknown));
    }
    return around;
}

/// Whether an epoch follows on several that were opened at the same time: then those who were in
/// one of them alone know nothing of what was said in the others.
bool joinsSeveral(const CrewBook &book, const Digest &epoch)
{
    const auto opening = std::ranges::find(book.openings(), epoch, &crew::Opening::id);
    const bool vouches = book.me() != nullptr && crew::vouches(*book.me());
    return vouches && opening != book.openings().end() && opening->after.size() > 1;
}

/// Who is in and which keys there are, by whomever it was said.
Result<std::vector<Event>> trustOfAll(Post &post, const CrewBook &book)
{
    std::vector<Event> trust;
    store::EventRepository repository(post.database);
    for (const char *subject : {"members", "epochs"}) {
        const auto events = repository.ofSubject({{journal::LaneKind::Box, book.box()}, subject});
        if (!events)
            return events.error();
        trust.insert(trust.end(), events->begin(), events->end());
    }
    return trust;
}

} // namespace

Outcome leadOver(Post &post, const CrewBook &book, const HeldEpoch &held,
                 const std::vector<Event> &own)
{
    if (held.epoch.lane.kind != journal::LaneKind::Box)
        return Done{};
    std::vector<Event> trust;
    std::ranges::copy_if(own, std::back_inserter(trust), crew::isOfTheCrew);
    if (trust.empty())
        return Done{};
    std::set<Digest> unknown; // opened here, and told to nobody yet
    for (const Event &event : trust)
        unknown.insert(blake2b(journal::canonicalText(event)));
    if (unknown.contains(held.epoch.id) && joinsSeveral(book, held.epoch.id)) {
        auto all = trustOfAll(post, book);
        if (!all)
            return all.error();
        trust = *std::move(all);
    }
    for (const HeldEpoch *before : lookedAt(book, held.epoch.id, unknown)) {
        if (Outcome done = sealOnHand(post, *before, trust); !done)
            return done;
    }
    return Done{};
}

} // namespace lidlark::sync
