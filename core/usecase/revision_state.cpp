#include "core/usecase/revision_state.h"

#include "core/box/item_changes.h"
#include "core/box/lid_list.h"
#include "core/box/request.h"
#include "core/box/revision_why.h"
#include "core/store/event_repository.h"

#include <algorithm>
#include <tuple>

namespace lidlark::usecase {

namespace {

using journal::Event;
using journal::Lane;
using journal::LaneKind;

Result<std::vector<Event>> eventsOf(Workplace &workplace, const Lane &lane,
                                    const std::string &subject)
{
    return store::EventRepository(workplace.database).standingOfSubject({lane, subject});
}

/// The first word of every phone that it holds all of @p revisions but its own.
std::vector<Received> receivedBy(const std::vector<Event> &mets,
                                 const std::vector<const Event *> &revisions)
{
    std::vector<const Event *> first;
    for (const Event &met : mets) {
        const auto covered = journal::coveredBy(met);
        const bool all = std::ranges::all_of(revisions, [&](const Event *revision) {
            const auto upTo = covered.find(revision->device.value);
            return upTo != covered.end() && upTo->second >= revision->counter;
        });
        const bool own = std::ranges::any_of(
            revisions, [&met](const Event *revision) { return revision->device == met.device; });
        if (!all || own)
            continue;
        const auto known = std::ranges::find_if(
            first, [&met](const Event *other) { return other->device == met.device; });
        if (known == first.end())
            first.push_back(&met);
        else if (met.counter < (*known)->counter)
            *known = &met;
    }
    std::vector<Received> received;
    received.reserve(first.size());
    for (const Event *met : first)
        received.push_back({met->author, met->when.day});
    std::ranges::sort(received, [](const Received &a, const Received &b) {
        return std::tie(a.day, a.person) < std::tie(b.day, b.person);
    });
    return received;
}

Outcome fillTakeOut(Workplace &workplace, const Family &family, const Lane &lane,
                    const std::vector<Event> &revisions, const journal::Seen &seen,
                    RevisionState &state)
{
    for (const ItemId &item : family.revision->revision.removed) {
        const auto events = eventsOf(workplace, lane, "item:" + item.value);
        if (!events)
            return events.error();
        RemovedThing thing{item, 0, false, {}, {}};
        for (const store::ItemRow &row : family.items) {
            if (row.item == item)
                thing.pieces = row.high + row.out;
        }
        if (const Event *said = box::confirmationOf(item, revisions, *events, seen)) {
            thing.out = true;
            thing.outBy = said->author;
            thing.outWhen = said->when;
        }
        state.takeOut.push_back(std::move(thing));
    }
    return Done{};
}

bool isOnTheWay(const store::ItemRow &row)
{
    return row.expected > 0 && !row.requests.empty() &&
           row.requests.back().step == box::RequestStep::OnItsWay;
}

} // namespace

bool RevisionState::isConfirmed() const
{
    return std::ranges::all_of(takeOut, &RemovedThing::out);
}

Result<std::optional<RevisionState>> revisionStateOf(Workplace &workplace, const Family &family)
{
    const Lane lane{LaneKind::Box, family.box.id.value};
    const auto revisions = eventsOf(workplace, lane, "revision");
    const auto mets = eventsOf(workplace, lane, "met");
    if (!revisions || !mets)
        return revisions ? mets.error() : revisions.error();
    if (!family.revision || revisions->size() < 2)
        return std::optional<RevisionState>();
    const journal::Seen seen(*mets);
    std::vector<const Event *> all;
    all.reserve(revisions->size());
    for (const Event &event : *revisions)
        all.push_back(&event);
    RevisionState state;
    state.number = family.revision->revision.number;
    state.sent = family.revision->issued;
    state.twoLists = family.revision->heads > 1;
    std::vector<const Event *> heads = box::standingOf(all, seen);
    std::ranges::sort(heads,
                      [](const Event *a, const Event *b) { return box::writtenEarlier(*a, *b); });
    state.received = receivedBy(*mets, heads);
    for (const Event *head : heads) {
        state.by = head->author;
        if (auto why = box::whyOf(*head); !why.empty())
            state.why.push_back(std::move(why));
    }
    if (const Outcome done = fillTakeOut(workplace, family, lane, *revisions, seen, state); !done)
        return done.error();
    for (const store::ItemRow &row : family.items) {
        if (isOnTheWay(row))
            state.onTheWay.push_back(row.item);
    }
    return std::optional(std::move(state));
}

} // namespace lidlark::usecase
