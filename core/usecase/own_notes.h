#pragma once

#include "core/play/own_note.h"
#include "core/usecase/workplace.h"

#include <string>
#include <vector>

namespace lidlark::usecase {

/// Keeps a short note to oneself (job.md G9): typed words, or with one tap a phrase. It lies in the
/// author's own lane. @returns its id. Errors: NotFound (child), Invalid (nothing typed, longer
/// than play::longestNote, more than one line).
Result<std::string> keepNote(Workplace &workplace, const std::string &childAlias,
                             const std::string &words);
Result<std::string> keepNote(Workplace &workplace, const std::string &childAlias,
                             play::NotePhrase phrase);

/// The author's own notes about a child, newest first. Errors: NotFound (child).
Result<std::vector<play::OwnNote>> ownNotes(Workplace &workplace, const std::string &childAlias);

/// Takes a note off. Until the day is over it can be put in again; then its words are erased.
/// Errors: NotFound (child, note).
Outcome removeNote(Workplace &workplace, const std::string &childAlias, const std::string &id);

/// Chooses that one note may go to the therapist with the next exchange, or that it stays after
/// all, as long as that was chosen today and on one of the author's phones. Nothing leaves this
/// phone by it. Errors: NotFound (child, note), Invalid (chosen on another day).
Outcome chooseToSend(Workplace &workplace, const std::string &childAlias, const std::string &id,
                     bool send);

/// Erases the words of notes that were taken off before today. Call it at the start.
Outcome eraseRemovedNotes(Workplace &workplace);

} // namespace lidlark::usecase
