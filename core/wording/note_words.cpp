#include "core/wording/note_words.h"

#include <array>

namespace lidlark::wording {

Sentence notePhraseWords(play::NotePhrase phrase)
{
    // In the order of play::NotePhrase.
    static constexpr std::array<English, play::notePhraseCount> words{
        say("Ask about this at the next visit"), say("Better at another time of day"),
        say("Better in a quieter place"), say("Somebody else wants to join in"),
        say("Something looks worn")};
    return {words[static_cast<std::size_t>(phrase)], {}};
}

} // namespace lidlark::wording
