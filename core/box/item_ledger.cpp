#include "core/box/item_ledger.h"

#include "core/box/item_changes.h"
#include "core/box/item_losses.h"
#include "core/box/item_removals.h"

#include <algorithm>
#include <tuple>

namespace lidlark::box {

namespace {

using journal::Event;
using journal::Seen;

enum class Relation { Covered, After, Open };

Relation relationTo(const Event &basis, const Event &change, const Seen &seen)
{
    if (seen.saw(basis, change))
        return Relation::Covered;
    if (seen.saw(change, basis))
        return Relation::After;
    const std::int64_t ahead = change.instant.ms - basis.instant.ms;
    if (ahead > marginMs)
        return Relation::After;
    return ahead < -marginMs ? Relation::Covered : Relation::Open;
}

void addGone(Tally &tally, const Exceptions &gone)
{
    tally.usedUp += gone.of(ExceptionKind::UsedUp);
    tally.lost += gone.of(ExceptionKind::Lost);
    tally.broken += gone.of(ExceptionKind::Broken);
    tally.driedOut += gone.of(ExceptionKind::DriedOut);
}

int goneForGood(const Exceptions &gone)
{
    return gone.total() - gone.of(ExceptionKind::StillInUse);
}

/// Covered by the count: only the difference from what the count says is booked.
void applyCovered(Tally &tally, const Change &change, const Exceptions &gone)
{
    addGone(tally, gone);
    tally.found += change.found;
}

void applyAfter(Tally &tally, const Change &change, const Exceptions &gone)
{
    addGone(tally, gone);
    tally.found += change.found;
    tally.out += gone.of(ExceptionKind::StillInUse);
    tally.inBox += change.found - gone.total();
}

/// An open change against a count: careful takes it as after when it takes pieces away, and as
/// covered when it brings pieces back; hopeful the other way round.
bool countsAsAfter(Relation relation, bool brings, bool careful)
{
    if (relation != Relation::Open)
        return relation == Relation::After;
    return careful != brings;
}

/// What one item's ledger is worked out from.
struct Story {
    int packed = 0;
    std::vector<Change> changes;
    std::vector<const Event *> removals;
};

/// The box was emptied of the item: all that is in it now, but for what was found since.
void takeOut(Tally &tally, int foundSinceThen)
{
    const int leaves = std::max(0, tally.inBox - foundSinceThen);
    tally.takenOut += leaves;
    tally.inBox -= leaves;
}

Tally tallyWithoutCount(const Story &story, const Seen &seen, bool careful)
{
    Tally tally;
    tally.packed = story.packed;
    tally.inBox = story.packed;
    for (const Change &change : story.changes)
        applyAfter(tally, change, careful ? change.careful : change.hopeful);
    if (!story.removals.empty())
        takeOut(tally, foundSince(story.removals, story.changes, seen, !careful));
    return tally;
}

/// The removals on the wanted side of the count.
std::vector<const Event *> removalsOf(const Story &story, const Event &basis, const Seen &seen,
                                      bool careful, bool after)
{
    std::vector<const Event *> removals;
    for (const Event *removal : story.removals) {
        if (countsAsAfter(relationTo(basis, *removal, seen), false, careful) == after)
            removals.push_back(removal);
    }
    return removals;
}

Tally tallyFrom(const Story &story, const Event *basis, const Seen &seen, bool careful)
{
    const auto counted = basis != nullptr ? readCounted(*basis) : std::nullopt;
    if (!counted)
        return tallyWithoutCount(story, seen, careful);
    Tally tally;
    tally.packed = story.packed;
    std::vector<Change> later;
    int expected = story.packed;
    for (const Change &change : story.changes) {
        if (countsAsAfter(relationTo(*basis, *change.first, seen), change.found > 0, careful)) {
            later.push_back(change);
            continue;
        }
        const Exceptions &gone = careful ? change.careful : change.hopeful;
        applyCovered(tally, change, gone);
        expected += change.found - goneForGood(gone);
    }
    const int said = counted->inBox + counted->out;
    if (!removalsOf(story, *basis, seen, careful, false).empty()) {
        // What the count does not find has left the house: it is not missing.
        tally.takenOut = std::max(0, expected - said);
        expected -= tally.takenOut;
    }
    tally.foundAtCount = std::max(0, said - expected);
    tally.missingAtCount = std::max(0, expected - said);
    tally.inBox = counted->inBox;
    tally.out = counted->out;
    for (const Change &change : later)
        applyAfter(tally, change, careful ? change.careful : change.hopeful);
    const auto removals = removalsOf(story, *basis, seen, careful, true);
    if (!removals.empty())
        takeOut(tally, foundSince(removals, later, seen, !careful));
    return tally;
}

/// The counts to compute from (events.md 6.1): one, unless several stand within the margin.
std::vector<const Event *> basesOf(std::span<const Event> events, const Seen &seen)
{
    std::vector<const Event *> counts;
    for (const Event &event : events) {
        if (readCounted(event))
            counts.push_back(&event);
    }
    std::vector<const Event *> standing = standingOf(counts, seen);
    for (const Event *candidate : standing) {
        const bool last = std::all_of(standing.begin(), standing.end(), [&](const Event *other) {
            return other == candidate || candidate->instant.ms > other->instant.ms + marginMs;
        });
        if (last)
            return {candidate};
    }
    if (standing.empty())
        standing.push_back(nullptr);
    return standing;
}

} // namespace

ItemLedger foldItem(int packed, std::span<const Event> arrived, const Seen &seen)
{
    // One order for every device, whatever the order of arrival.
    std::vector<Event> events(arrived.begin(), arrived.end());
    std::sort(events.begin(), events.end(), [](const Event &a, const Event &b) {
        return std::tie(a.instant, a.device, a.counter, a.fields) <
               std::tie(b.instant, b.device, b.counter, b.fields);
    });
    ItemLedger ledger;
    const Story story{packed, changesOf(events, seen), takenOutOf(events)};
    const std::vector<Change> &changes = story.changes;
    const std::vector<const Event *> bases = basesOf(events, seen);
    const Event *carefulBasis = bases.front();
    for (std::size_t i = 0; i < bases.size(); ++i) {
        const Tally careful = tallyFrom(story, bases[i], seen, true);
        const Tally hopeful = tallyFrom(story, bases[i], seen, false);
        if (i == 0 || careful.inBox < ledger.careful.inBox) {
            ledger.careful = careful;
            carefulBasis = bases[i];
        }
        if (i == 0 || hopeful.inBox > ledger.hopeful.inBox)
            ledger.hopeful = hopeful;
    }
    for (const Change &change : changes) {
        if (!change.play.empty())
            ledger.outcomes.push_back({change.play, change.careful, change.standing->author});
    }
    ledger.driedOut = ledger.careful.driedOut > 0 && ledger.low() == 0;
    const Missing missing{carefulBasis, ledger.careful.missingAtCount};
    ledger.losses = lossesOf(events, changes, missing, seen);
    ledger.opened = openedDay(events, seen);
    return ledger;
}

} // namespace lidlark::box
