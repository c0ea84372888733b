#pragma once

#include "core/wording/sentence.h"

#include <string>
#include <vector>

namespace lidlark::wording {

/// What may have happened (safety.md EM-01 to EM-04).
enum class Emergency { Airway, Swallowed, Reaction, Eye };

/// The first line, before any question. EM-05: no country's number is built in.
/// @param number what the family has entered; empty: "your local emergency number".
Sentence emergencyLead(const std::string &number);

/// What an adult taps: "May be in the mouth, nose, ear or throat".
Sentence emergencyName(Emergency emergency);

/// What to do until help is there, one line each; no manoeuvres (EM-01 asks for a trained
/// instructor).
/// Source: safety.md EM-01 (UK NHS regional children's guide, Choking), EM-02 with BB-01, MG-01 and
/// CN-02 (a coin may be a coin cell), EM-03 (from memory), EM-04 (aboutkidshealth.ca, eye splashes:
/// at least 15 minutes on one Canadian page).
/// @param poisonLine what the family has entered; empty: "the poison line".
std::vector<Sentence> emergencyLines(Emergency emergency, const std::string &poisonLine);

} // namespace lidlark::wording
