#pragma once

#include "core/catalogue/catalogue.h"
#include "core/journal/event.h"
#include "core/wording/sentence.h"

#include <span>
#include <string>
#include <vector>

namespace lidlark::wording {

/// What a noted act is about, beside its events.
struct NotedAbout {
    const catalogue::Catalogue &catalogue;
    ActivityId activity; ///< Of the play; empty: of none.
    std::string person;  ///< Of whom a safety statement speaks; empty: of the home.
    Day today;
};

/// What one act has noted, a whole line for each thing: "2 pegs lost", "Dough: opened today". A
/// full count is one line. Never empty: what has no words of its own is told as "Something noted".
std::vector<Sentence> notedWords(std::span<const journal::Event> act, const NotedAbout &about);

/// Who noted it, and when: "Ruth, 18:25".
Sentence notedBy(const std::string &author, int minuteOfDay);

} // namespace lidlark::wording
