#include "core/usecase/own_notes.h"

#include "core/journal/take_backs.h"
#include "core/store/box_repository.h"
#include "core/store/note_repository.h"
#include "core/store/recording.h"
#include "core/usecase/notes_lane.h"
#include "core/usecase/say_one.h"
#include "core/usecase/take_back.h"
#include "core/usecase/typed_line.h"

#include <algorithm>

namespace lidlark::usecase {

namespace {

using journal::Event;
using journal::Kind;

Result<std::string> keep(Workplace &workplace, const std::string &childAlias, play::OwnNote note)
{
    const auto box = store::BoxRepository(workplace.database).boxOf(childAlias);
    if (!box)
        return box.error();
    note.id = workplace.entropy.freshId();
    note.child = box->child;
    const Outcome said =
        sayOne(workplace, notesLaneOf(workplace.device), Kind::Note, play::fieldsOf(note));
    if (!said)
        return said.error();
    return note.id;
}

Result<play::OwnNote> find(Workplace &workplace, const std::string &childAlias,
                           const std::string &id)
{
    const auto notes = ownNotes(workplace, childAlias);
    if (!notes)
        return notes.error();
    const auto note = std::find_if(notes->begin(), notes->end(),
                                   [&id](const play::OwnNote &known) { return known.id == id; });
    if (note == notes->end())
        return Error{ErrorCode::NotFound, "this note"};
    return *note;
}

Outcome keepHere(Workplace &workplace, const std::string &childAlias, const std::string &id)
{
    const auto said =
        store::EventRepository(workplace.database)
            .standingOfSubject({notesLaneOf(workplace.device), play::subjectOfNote(id)});
    if (!said)
        return said.error();
    for (const Event &event : *said) {
        if (event.kind != Kind::NoteSent)
            continue;
        if (Outcome done = takeBack(workplace, {childAlias, {}, journal::identityOf(event)}); !done)
            return done;
    }
    return Done{};
}

} // namespace

Result<std::string> keepNote(Workplace &workplace, const std::string &childAlias,
                             const std::string &words)
{
    const auto line = typedLine("note", words, play::longestNote);
    if (!line)
        return line.error();
    if (line->empty())
        return Error{ErrorCode::Invalid, "note: nothing written"};
    play::OwnNote note;
    note.words = *line;
    return keep(workplace, childAlias, std::move(note));
}

Result<std::string> keepNote(Workplace &workplace, const std::string &childAlias,
                             play::NotePhrase phrase)
{
    play::OwnNote note;
    note.phrase = phrase;
    return keep(workplace, childAlias, std::move(note));
}

Result<std::vector<play::OwnNote>> ownNotes(Workplace &workplace, const std::string &childAlias)
{
    const auto box = store::BoxRepository(workplace.database).boxOf(childAlias);
    if (!box)
        return box.error();
    return store::NoteRepository(workplace.database)
        .notes(notesLaneOf(workplace.device).scope, box->child);
}

Outcome removeNote(Workplace &workplace, const std::string &childAlias, const std::string &id)
{
    const auto note = find(workplace, childAlias, id);
    if (!note)
        return note.error();
    return sayOne(workplace, notesLaneOf(workplace.device), Kind::Note,
                  play::fieldsOfNoteRemoval(id, note->child));
}

Outcome chooseToSend(Workplace &workplace, const std::string &childAlias, const std::string &id,
                     bool send)
{
    const auto note = find(workplace, childAlias, id);
    if (!note)
        return note.error();
    if (note->sent == send)
        return Done{};
    if (!send)
        return keepHere(workplace, childAlias, id);
    return sayOne(workplace, notesLaneOf(workplace.device), Kind::NoteSent,
                  play::fieldsOfNoteSent(id, note->child));
}

Outcome eraseRemovedNotes(Workplace &workplace)
{
    const auto today = store::todayOf(workplace.clock);
    if (!today)
        return today.error();
    const journal::Lane lane = notesLaneOf(workplace.device);
    const auto removed =
        store::NoteRepository(workplace.database).removedBefore(lane.scope, today->day);
    if (!removed || removed->empty())
        return removed ? Outcome(Done{}) : Outcome(removed.error());
    auto recording = store::Recording::begin(workplace.database, workplace.device, workplace.clock);
    if (!recording)
        return recording.error();
    for (const std::string &id : *removed) {
        if (Outcome done = recording->eraseSubject({lane, play::subjectOfNote(id)}); !done)
            return done;
    }
    return recording->commit();
}

} // namespace lidlark::usecase
