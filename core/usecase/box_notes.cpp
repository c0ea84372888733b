#include "core/usecase/box_notes.h"

#include "core/box/box_events.h"
#include "core/box/request_events.h"
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
    } else if (const auto came = box::readCountedIn(event)) {
        note.act = box::Act::CountedIn;
        note.item = came->item;
        note.pieces = came->pieces;
    } else if (const auto counted = box::readCounted(event)) {
        note.act = box::Act::Counted;
        note.item = counted->item;
    } else if (const auto gone = box::readLooseException(event); gone && gone->count > 0) {
        note.act = box::Act::Gone;
        note.item = gone->item;
        note.pieces = gone->count;
        note.kind = gone->kind;
    } else {
        return std::nullopt;
    }
    return note;
}

/// Each find, arrival and loss is a fact of its own; a count is one however many items it names.
bool sameAct(const BoxNote &a, const BoxNote &b)
{
    return a.act == b.act && a.pieces == 0 && b.pieces == 0 && a.author == b.author &&
           a.when == b.when && (a.item == b.item || a.act == box::Act::Counted);
}

} // namespace

Result<std::vector<BoxNote>> boxNotesOf(Workplace &workplace, const Family &family, Day since)
{
    const journal::Lane lane{journal::LaneKind::Box, family.box.id.value};
    store::EventRepository repository(workplace.database);
    std::vector<BoxNote> notes;
    for (const store::ItemRow &row : family.items) {
        const auto events = repository.standingOfSubject({lane, "item:" + row.item.value});
        if (!events)
            return events.error();
        for (const Event &event : *events) {
            const auto note = noteFrom(event);
            if (!note || note->when.day < since)
                continue;
            const auto known = std::find_if(notes.begin(), notes.end(), [&note](const auto &other) {
                return sameAct(*note, other);
            });
            if (known == notes.end())
                notes.push_back(*note);
            else if (known->item != note->item)
                known->item = {};
        }
    }
    std::stable_sort(notes.begin(), notes.end(),
                     [](const BoxNote &a, const BoxNote &b) { return b.at < a.at; });
    return notes;
}

} // namespace lidlark::usecase
