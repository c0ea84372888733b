#include "core/box/item_changes.h"

#include "core/box/request_events.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace lidlark::box {

namespace {

using journal::Event;
using journal::Seen;

/// A register's first event: the earliest written of those that have seen no other in it.
const Event *firstOf(const std::vector<Value> &said, const Seen &seen)
{
    const Event *first = nullptr;
    for (const Value &value : said) {
        const bool hasSeenOther = std::ranges::any_of(
            said, [&](const Value &other) { return seen.saw(*value.event, *other.event); });
        if (!hasSeenOther && (first == nullptr || writtenEarlier(*value.event, *first)))
            first = value.event;
    }
    return first;
}

/// What stands of a register; two phones that say the same say it once.
Change changeOf(const std::vector<Value> &said, const Seen &seen)
{
    std::vector<const Event *> events;
    events.reserve(said.size());
    for (const Value &value : said)
        events.push_back(value.event);
    Change change;
    change.first = firstOf(said, seen);
    change.day = change.first->when.day;
    const auto standing = standingOf(events, seen);
    for (const Value &value : said) {
        const bool stands =
            std::find(standing.begin(), standing.end(), value.event) != standing.end();
        const bool known =
            std::any_of(change.values.begin(), change.values.end(),
                        [&value](const Value &other) { return value.sameAs(other); });
        if (stands && !known)
            change.values.push_back(value);
    }
    return change;
}

Change changeOf(const Event &event, const LooseException &loose)
{
    Value value{&event, {}, 0, 0};
    value.gone.set(loose.kind, loose.count);
    return {&event, {}, std::nullopt, loose.day.value_or(event.when.day), {value}};
}

/// Everything said of one item, sorted into registers.
struct Said {
    std::map<PlayId, std::vector<Value>> strong;
    std::map<PlayId, std::vector<Value>> weak;
    std::map<int, std::vector<Value>> rounds;
    std::vector<Change> single;

    void take(const Event &event)
    {
        if (const auto outcome = readOutcome(event))
            (outcome->weak ? weak : strong)[outcome->play].push_back(
                {&event, outcome->exceptions, 0, 0});
        else if (const auto counted = readCountedIn(event))
            rounds[counted->round].push_back({&event, {}, 0, counted->pieces});
        else if (const auto loose = readLooseException(event))
            single.push_back(changeOf(event, *loose));
        else if (const auto found = readFound(event))
            single.push_back(
                {&event, {}, std::nullopt, event.when.day, {Value{&event, {}, found->count, 0}}});
    }
};

} // namespace

Exceptions Change::mostGone() const
{
    Exceptions most = values.front().gone;
    for (const Value &value : values) {
        for (std::size_t i = 0; i < exceptionKindCount; ++i)
            most.counts[i] = std::max(most.counts[i], value.gone.counts[i]);
    }
    return most;
}

int Change::leastBrought() const
{
    int least = values.front().brought();
    for (const Value &value : values)
        least = std::min(least, value.brought());
    return least;
}

bool Change::brings() const
{
    return std::any_of(values.begin(), values.end(), [](const Value &value) {
        return value.brought() > 0 || value.gone.total() < 0;
    });
}

bool Change::isNothing() const
{
    return !brings() && mostGone().allHome();
}

bool writtenEarlier(const Event &a, const Event &b)
{
    return std::tie(a.instant, a.device, a.counter, a.fields) <
           std::tie(b.instant, b.device, b.counter, b.fields);
}

std::vector<const Event *> standingOf(const std::vector<const Event *> &events, const Seen &seen)
{
    std::vector<const Event *> standing;
    for (const Event *candidate : events) {
        const bool replaced = std::any_of(events.begin(), events.end(), [&](const Event *other) {
            return seen.saw(*other, *candidate);
        });
        if (!replaced)
            standing.push_back(candidate);
    }
    return standing;
}

std::vector<Change> changesOf(std::span<const Event> events, const Seen &seen)
{
    Said said;
    std::vector<const Event *> ordered;
    ordered.reserve(events.size());
    for (const Event &event : events)
        ordered.push_back(&event);
    std::sort(ordered.begin(), ordered.end(),
              [](const Event *a, const Event *b) { return writtenEarlier(*a, *b); });
    for (const Event *event : ordered)
        said.take(*event);
    for (const auto &[play, values] : said.weak)
        said.strong.try_emplace(play, values); // a weak "home" fills only an empty place
    std::vector<Change> changes = std::move(said.single);
    for (const auto &[play, values] : said.strong) {
        changes.push_back(changeOf(values, seen));
        changes.back().play = play;
    }
    for (const auto &[round, values] : said.rounds) {
        changes.push_back(changeOf(values, seen));
        changes.back().round = round;
    }
    std::sort(changes.begin(), changes.end(),
              [](const Change &a, const Change &b) { return writtenEarlier(*a.first, *b.first); });
    return changes;
}

} // namespace lidlark::box
