#include "core/store/home_repository.h"
#include "core/store/note_repository.h"
#include "core/usecase/export_tables.h"
#include "core/usecase/notes_lane.h"

namespace lidlark::usecase {

namespace {

void addCheckIn(OpenTable &table, const ExportSource &source, const std::string &child,
                const std::string &home, const checkin::CheckIn &checkIn)
{
    table.add({child, home, checkIn.when.day, checkIn.when.part,
               checkin::kiteNames.of(checkIn.before),
               plainWords(checkin::shownByNames.of(checkIn.shownBy)),
               checkIn.after ? Cell(checkin::kiteNames.of(*checkIn.after)) : Cell(),
               checkIn.activity.empty() ? Cell() : Cell(source.activity(checkIn.activity))});
}

} // namespace

Tables checkInTables(const ExportSource &source)
{
    OpenTable table{"the kite",
                    "check-ins",
                    {"child", "home", "day", "part of day", "kite", "shown by", "kite after play",
                     "after which activity"},
                    {}};
    store::HomeRepository homes(source.workplace.database);
    for (const child::HomeSheet &home : source.homes) {
        for (const store::BoxRow &box : source.boxes) {
            const auto checkIns = homes.checkIns(home.id, box.child, Day{});
            if (!checkIns)
                return checkIns.error();
            for (const checkin::CheckIn &checkIn : *checkIns)
                addCheckIn(table, source, box.alias, source.named(home.id.value), checkIn);
        }
    }
    return std::vector{std::move(table)};
}

Tables noteTables(const ExportSource &source)
{
    OpenTable table{"notes",
                    "own notes",
                    {"child", "day", "part of day", "written by", "words", "chosen phrase",
                     "may go to the therapist"},
                    {}};
    store::NoteRepository repository(source.workplace.database);
    const std::string owner = notesLaneOf(source.workplace.device).scope;
    for (const store::BoxRow &box : source.boxes) {
        const auto notes = repository.notes(owner, box.child);
        if (!notes)
            return notes.error();
        for (const play::OwnNote &note : *notes)
            table.add(
                {box.alias, note.when.day, note.when.part, note.author,
                 note.words.empty() ? Cell() : Cell(note.words),
                 note.phrase ? Cell(plainWords(play::notePhraseNames.of(*note.phrase))) : Cell(),
                 yesOrNo(note.sent)});
    }
    return std::vector{std::move(table)};
}

} // namespace lidlark::usecase
