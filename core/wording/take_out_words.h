#pragma once

#include "core/child/avoided.h"
#include "core/child/home_sheet.h"
#include "core/wording/sentence.h"

#include <optional>
#include <string>
#include <vector>

namespace lidlark::wording {

/// "latex-free home": what a box's label says in words from the next print on (job.md scenario 3).
std::vector<Sentence> homeLabel(const child::Avoidances &avoidances);
Sentence homeLabelWord(child::Avoided what);

/// "This is a latex-free home now." In words, never as a sign alone (job.md scenario 3).
Sentence freeHome(child::Avoided what);
/// "Take these out of the house, then wash hands." For wheat the table is wiped too (MD-01).
Sentence takeThemOut(child::Avoided what);
/// Generic, and no advice: "Trouble breathing, swelling, fainting: emergency number now."
/// Source: job.md scenario 3, traps; safety.md EM-03.
Sentence emergencyLine();
/// What else in a house may hold it. Source: safety.md LA-01 (balloons, rubber bands, gloves, some
/// adhesives, squeezy toys), MD-01 and MD-02 (dough, pastes).
Sentence lookAtHome(child::Avoided what);
/// "Marta said so today, 18:25." With a person: "Marta said so of Bartek today, 18:25."
/// @param day as of day_words.h.
Sentence saidBy(const std::string &author, const std::string &person, const Sentence &day,
                int minuteOfDay);
/// "Two in the box.": of a thing that must leave.
Sentence stillInBox(int pieces);
/// "In its place: silicone loops, asked for."
Sentence standsIn(const std::string &name, bool asked);

} // namespace lidlark::wording
