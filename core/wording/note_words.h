#pragma once

#include "core/play/own_note.h"
#include "core/wording/sentence.h"

namespace lidlark::wording {

/// What a note to oneself says with one tap: "Ask about this at the next visit".
Sentence notePhraseWords(play::NotePhrase phrase);

} // namespace lidlark::wording
