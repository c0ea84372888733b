#pragma once

#include "core/catalogue/catalogue.h"

#include <span>

namespace lidlark::catalogue {

/// The catalogue in another language: what it decides is the English entries', what it says are the
/// translations' words. An entry without a translation stays English, and so, wholly, does one
/// whose translation has a fault: another version of the English, another number of steps, lines or
/// gradings, other numbers in a line. Each fault is a line of `untranslated`.
/// @param english as `load` gives it.
/// @param files all of one language: "languages/pl/slow-oars.yaml" for an activity,
/// "languages/pl/items.yaml" for the items.
Catalogue translate(const Catalogue &english, std::span<const SourceFile> files);

/// The entry in English, which may be the entry itself. What reads words to decide something reads
/// these.
template <class Entry> const Entry &inEnglish(const Entry &entry)
{
    return entry.inEnglish ? *entry.inEnglish : entry;
}

/// Nobody has checked these words yet: lines that guard somebody (what to watch for, when to stop,
/// how a swap is played, how an item is cared for) are shown with the English under them.
template <class Entry> bool isUnchecked(const Entry &entry)
{
    return entry.wordsOrigin == WordsOrigin::MachineMade;
}

} // namespace lidlark::catalogue
