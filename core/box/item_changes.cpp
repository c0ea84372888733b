#include "core/box/item_changes.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace lidlark::box {

namespace {

using journal::Event;
using journal::Seen;

struct Said {
    const Event *event;
    Outcome outcome;
};

bool earlier(const Event *a, const Event *b)
{
    return std::tie(a->instant, a->device, a->counter) <
           std::tie(b->instant, b->device, b->counter);
}

/// The register's first event: the earliest that nothing else in it precedes.
const Event *firstOf(const std::vector<const Event *> &events, const Seen &seen)
{
    const Event *first = events.front();
    for (const Event *event : events) {
        if (seen.saw(*first, *event) || (!seen.saw(*event, *first) && earlier(event, first)))
            first = event;
    }
    return first;
}

/// Concurrent different values carry both ends; whatever one of them says is lost stays lost.
Change changeOf(const std::vector<Said> &register_, const Seen &seen)
{
    std::vector<const Event *> events;
    events.reserve(register_.size());
    for (const Said &said : register_)
        events.push_back(said.event);
    Change change;
    change.first = firstOf(events, seen);
    change.play = register_.front().outcome.play;
    int mostLost = 0;
    bool any = false;
    const auto standing = standingOf(events, seen);
    for (const Said &said : register_) {
        if (std::find(standing.begin(), standing.end(), said.event) == standing.end())
            continue;
        const Exceptions &value = said.outcome.exceptions;
        mostLost = std::max(mostLost, value.of(ExceptionKind::Lost));
        if (!any || value.total() > change.careful.total()) {
            change.careful = value;
            change.standing = said.event;
        }
        if (!any || value.total() < change.hopeful.total())
            change.hopeful = value;
        any = true;
    }
    change.careful.set(ExceptionKind::Lost, mostLost);
    return change;
}

} // namespace

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
    std::vector<Change> changes;
    std::map<PlayId, std::vector<Said>> strong;
    std::map<PlayId, std::vector<Said>> weak;
    for (const Event &event : events) {
        if (const auto outcome = readOutcome(event)) {
            (outcome->weak ? weak : strong)[outcome->play].push_back({&event, *outcome});
        } else if (const auto loose = readLooseException(event)) {
            Change change{&event, &event, {}, {}, {}, 0};
            change.careful.set(loose->kind, loose->count);
            change.hopeful = change.careful;
            changes.push_back(change);
        } else if (const auto found = readFound(event)) {
            changes.push_back({&event, &event, {}, {}, {}, found->count});
        }
    }
    for (const auto &[play, said] : weak)
        strong.try_emplace(play, said); // a weak "home" fills only an empty place
    for (const auto &[play, said] : strong)
        changes.push_back(changeOf(said, seen));
    std::sort(changes.begin(), changes.end(),
              [](const Change &a, const Change &b) { return earlier(a.first, b.first); });
    return changes;
}

} // namespace lidlark::box
