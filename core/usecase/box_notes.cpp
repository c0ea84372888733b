#include "core/usecase/box_notes.h"

#include "core/box/box_events.h"
#include "core/store/event_repository.h"

#include <algorithm>
#include <optional>

namespace lidlark::usecase {

namespace {

using journal::Event;

std::optional<BoxNote> noteFrom(const Event &event)
{
    BoxNote note;
    note.author = event.author;
    note.when = event.when;
    note.at = event.instant;
    if (const auto checked = box::readFloorChecked(event)) {
        note.act = box::Act::FloorChecked;
        note.item = checked->item;
    } else if (const auto found = box::readFound(event)) {
        note.act = box::Act::Found;
        note.item = found->item;
        note.pieces = found->count;
    } else if (const auto taken = box::readTakenOut(event)) {
        note.act = box::Act::TakenOut;
        note.item = taken->item;
    } else {
        return std::nullopt;
    }
    return note;
}

bool sameAct(const BoxNote &a, const BoxNote &b)
{
    return a.act == b.act && a.act != box::Act::Found && a.item == b.item && a.author == b.author &&
           a.when == b.when;
}

} // namespace

Result<std::vector<BoxNote>> boxNotesOf(Workplace &workplace, const Family &family, Day since)
{
    const journal::Lane lane{journal::LaneKind::Box, family.box.id.value};
    store::EventRepository repository(workplace.database);
    std::vector<BoxNote> notes;
    for (const store::ItemRow &row : family.items) {
        const auto events = repository.ofSubject({lane, "item:" + row.item.value});
        if (!events)
            return events.error();
        for (const Event &event : *events) {
            const auto note = noteFrom(event);
            if (!note || note->when.day < since)
                continue;
            const bool known = std::any_of(notes.begin(), notes.end(), [&note](const auto &other) {
                return sameAct(*note, other);
            });
            if (!known)
                notes.push_back(*note);
        }
    }
    std::stable_sort(notes.begin(), notes.end(),
                     [](const BoxNote &a, const BoxNote &b) { return b.at < a.at; });
    return notes;
}

} // namespace lidlark::usecase
