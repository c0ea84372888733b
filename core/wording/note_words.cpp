#include "core/wording/note_words.h"

#include <array>

namespace lidlark::wording {

Sentence notePhraseWords(play::NotePhrase phrase)
{
    // In the order of play::NotePhrase.
    static constexpr std::array<const char *, play::notePhraseCount> words{
        "Ask about this at the next visit", "Better at another time of day",
        "Better in a quieter place", "Somebody else wants to join in", "Something looks worn"};
    return {words[static_cast<std::size_t>(phrase)], {}};
}

} // namespace lidlark::wording
