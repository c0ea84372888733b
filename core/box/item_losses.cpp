#include "core/box/item_losses.h"

#include "core/journal/fields.h"

#include <algorithm>

namespace lidlark::box {

namespace {

using journal::Event;
using journal::Seen;

struct Entry {
    const Event *event;
    Loss loss;
};

std::vector<Entry> entriesOf(const std::vector<Change> &changes, const Missing &missing)
{
    std::vector<Entry> entries;
    const auto add = [&entries](const Event &event, int pieces) {
        entries.push_back(
            {&event, {journal::identityOf(event), pieces, false, event.author, event.when}});
    };
    for (const Change &change : changes) {
        if (const int lost = change.careful.of(ExceptionKind::Lost); lost > 0)
            add(*change.standing, lost);
    }
    if (missing.count != nullptr && missing.pieces > 0)
        add(*missing.count, missing.pieces);
    return entries;
}

void closeByFinds(std::vector<Entry> &entries, std::span<const Event> events, const Seen &seen)
{
    for (const Event &event : events) {
        const auto found = readFound(event);
        if (!found)
            continue;
        int left = found->count;
        for (Entry &entry : entries) {
            if (left == 0 || entry.loss.pieces == 0 || !seen.saw(event, *entry.event))
                continue;
            const int closes = std::min(left, entry.loss.pieces);
            entry.loss.pieces -= closes;
            left -= closes;
        }
    }
}

void closeByChecks(std::vector<Entry> &entries, std::span<const Event> events, const Seen &seen)
{
    for (const Event &event : events) {
        const auto checked = readFloorChecked(event);
        if (!checked)
            continue;
        for (Entry &entry : entries) {
            if (entry.loss.identity == checked->loss && seen.saw(event, *entry.event))
                entry.loss.closed = true;
        }
    }
}

} // namespace

std::vector<Loss> lossesOf(std::span<const Event> events, const std::vector<Change> &changes,
                           const Missing &missing, const Seen &seen)
{
    std::vector<Entry> entries = entriesOf(changes, missing);
    closeByFinds(entries, events, seen);
    closeByChecks(entries, events, seen);
    std::vector<Loss> losses;
    for (Entry &entry : entries) {
        entry.loss.closed = entry.loss.closed || entry.loss.pieces == 0;
        losses.push_back(entry.loss);
    }
    return losses;
}

std::optional<Day> openedDay(std::span<const Event> events, const Seen &seen)
{
    std::vector<const Event *> said;
    for (const Event &event : events) {
        if (event.kind == journal::Kind::Opened)
            said.push_back(&event);
    }
    std::optional<Day> earliest;
    for (const Event *event : standingOf(said, seen)) {
        const auto text = journal::Fields(event->fields).text("day");
        const auto day = text ? dayFromText(*text) : std::nullopt;
        if (day && (!earliest || *day < *earliest))
            earliest = day;
    }
    return earliest;
}

} // namespace lidlark::box
