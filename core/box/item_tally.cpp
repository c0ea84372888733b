#include "core/box/item_tally.h"

#include "core/box/item_removals.h"

#include <algorithm>

namespace lidlark::box {

namespace {

int goneForGood(const Exceptions &gone)
{
    return gone.total() - gone.of(ExceptionKind::StillInUse);
}

void book(Tally &tally, const Value &value)
{
    tally.usedUp += value.gone.of(ExceptionKind::UsedUp);
    tally.lost += value.gone.of(ExceptionKind::Lost);
    tally.broken += value.gone.of(ExceptionKind::Broken);
    tally.driedOut += value.gone.of(ExceptionKind::DriedOut);
    tally.found += value.found;
    tally.restocked += value.countedIn;
}

void bookAfter(Tally &tally, const Value &value)
{
    book(tally, value);
    tally.out += value.gone.of(ExceptionKind::StillInUse);
    tally.inBox += value.brought() - value.gone.total();
}

/// The box was emptied of the item: all that is in it now, but for what came in since.
void takeOut(Tally &tally, int cameSince)
{
    const int leaves = std::max(0, tally.inBox - cameSince);
    tally.takenOut += leaves;
    tally.inBox -= leaves;
}

/// What the group's covered entries say at most.
int mostCovered(const Reading &reading, const Group &group)
{
    int most = 0;
    for (const Entry &entry : group) {
        if (!reading.after[entry.change])
            most = std::max(most, reading.values[entry.change].gone.of(entry.kind));
    }
    return most;
}

/// Leaves @p wanted pieces on one of the group's entries on this side of the count, and none on the
/// others.
void leaveOn(Reading &reading, const Group &group, bool after, int wanted)
{
    for (const Entry &entry : group) {
        if (reading.after[entry.change] != after)
            continue;
        reading.values[entry.change].gone.set(entry.kind, wanted);
        wanted = 0;
    }
}

} // namespace

void countOnce(Reading &reading, const std::vector<Group> &groups)
{
    for (const Group &group : groups) {
        int most = 0;
        for (const Entry &entry : group)
            most = std::max(most, reading.values[entry.change].gone.of(entry.kind));
        const int covered = mostCovered(reading, group);
        leaveOn(reading, group, false, covered);
        leaveOn(reading, group, true, most - covered);
    }
}

Tally tallyOf(int packed, const std::vector<Change> &changes, const Reading &reading,
              const journal::Seen &seen)
{
    Tally tally;
    tally.packed = packed;
    tally.inBox = packed;
    const auto counted = reading.basis != nullptr ? readCounted(*reading.basis) : std::nullopt;
    if (counted) {
        int expected = packed;
        for (std::size_t i = 0; i < changes.size(); ++i) {
            if (reading.after[i])
                continue;
            book(tally, reading.values[i]);
            expected += reading.values[i].brought() - goneForGood(reading.values[i].gone);
        }
        const int said = counted->inBox + counted->out;
        if (!reading.removalsBefore.empty()) {
            // What the count does not find has left the house: it is not missing.
            tally.takenOut = std::max(0, expected - said);
            expected -= tally.takenOut;
        }
        tally.foundAtCount = std::max(0, said - expected);
        tally.missingAtCount = std::max(0, expected - said);
        tally.inBox = counted->inBox;
        tally.out = counted->out;
    }
    for (std::size_t i = 0; i < changes.size(); ++i) {
        if (!counted || reading.after[i])
            bookAfter(tally, reading.values[i]);
    }
    if (!reading.removalsAfter.empty())
        takeOut(tally, cameSince(changes, reading, seen));
    return tally;
}

} // namespace lidlark::box
