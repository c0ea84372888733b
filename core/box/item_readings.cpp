#include "core/box/item_readings.h"

#include <algorithm>

namespace lidlark::box {

namespace {

using journal::Event;

/// No family disagrees about more plays than this at once; a hostile set of events costs no more.
constexpr std::size_t mostChoices = 4096;

Reading startOf(const OpenMatters &matters, std::size_t count, bool hopeful)
{
    Reading reading;
    reading.basis = matters.basis.counts[count];
    reading.hopeful = hopeful;
    for (std::size_t i = 0; i < matters.changes.size(); ++i) {
        const Relation relation = matters.relations[count][i];
        const bool open = hopeful == matters.changes[i].brings();
        reading.after.push_back(relation == Relation::Open ? open : relation == Relation::After);
    }
    for (std::size_t i = 0; i < matters.removals.size(); ++i) {
        const Relation relation = matters.removalRelations[count][i];
        const bool after = relation == Relation::Open ? !hopeful : relation == Relation::After;
        (after ? reading.removalsAfter : reading.removalsBefore).push_back(matters.removals[i]);
    }
    return reading;
}

std::size_t indexOf(const OpenMatters &matters, const Event *count)
{
    const auto &counts = matters.basis.counts;
    return static_cast<std::size_t>(std::find(counts.begin(), counts.end(), count) -
                                    counts.begin());
}

Value mostCareful(const Change &change)
{
    Value value = change.values.front();
    value.gone = change.mostGone();
    for (const Value &other : change.values) {
        if (other.brought() < value.brought()) {
            value.found = other.found;
            value.countedIn = other.countedIn;
        }
    }
    return value;
}

bool leavesMore(const Value &a, const Value &b)
{
    return a.brought() - a.gone.total() > b.brought() - b.gone.total();
}

bool isJoined(std::size_t change, const std::vector<Group> &groups)
{
    return std::any_of(groups.begin(), groups.end(), [change](const Group &group) {
        return std::any_of(group.begin(), group.end(),
                           [change](const Entry &entry) { return entry.change == change; });
    });
}

/// Every way to choose one value for each change that may leave most. Where a change is joined with
/// no other, that is the value that leaves most by itself.
std::vector<std::vector<Value>> choicesOf(const OpenMatters &matters)
{
    std::vector<std::vector<Value>> choices{{}};
    for (std::size_t i = 0; i < matters.changes.size(); ++i) {
        std::vector<Value> values = matters.changes[i].values;
        std::stable_sort(values.begin(), values.end(), leavesMore);
        const bool one =
            !isJoined(i, matters.doubles.possible) || choices.size() * values.size() > mostChoices;
        if (one)
            values.resize(1);
        std::vector<std::vector<Value>> longer;
        for (const std::vector<Value> &begun : choices) {
            for (const Value &value : values) {
                longer.push_back(begun);
                longer.back().push_back(value);
            }
        }
        choices = std::move(longer);
    }
    return choices;
}

} // namespace

Reading carefulReading(const OpenMatters &matters, const Event *count)
{
    Reading reading = startOf(matters, indexOf(matters, count), false);
    for (const Change &change : matters.changes)
        reading.values.push_back(mostCareful(change));
    countOnce(reading, matters.doubles.answered);
    return reading;
}

std::vector<Reading> hopefulReadings(const OpenMatters &matters, const Event *count)
{
    std::vector<Reading> readings;
    for (const std::vector<Value> &values : choicesOf(matters)) {
        Reading reading = startOf(matters, indexOf(matters, count), true);
        reading.values = values;
        countOnce(reading, matters.doubles.possible);
        readings.push_back(std::move(reading));
    }
    return readings;
}

Ends endsOf(int packed, const OpenMatters &matters, const journal::Seen &seen)
{
    Ends ends;
    bool first = true;
    for (const Event *count : matters.basis.counts) {
        const Tally careful =
            tallyOf(packed, matters.changes, carefulReading(matters, count), seen);
        if (first || careful.inBox < ends.careful.inBox) {
            ends.careful = careful;
            ends.carefulBasis = count;
        }
        for (const Reading &reading : hopefulReadings(matters, count)) {
            const Tally hopeful = tallyOf(packed, matters.changes, reading, seen);
            if (first || hopeful.inBox > ends.hopeful.inBox)
                ends.hopeful = hopeful;
            first = false;
        }
    }
    return ends;
}

} // namespace lidlark::box
