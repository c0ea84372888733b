#pragma once

#include "core/base/enum_names.h"
#include "core/wording/sentence.h"

#include <string>
#include <vector>

namespace lidlark::wording {

/// What went wrong, in the order in which it is offered.
enum class Trouble { Airway, Swallowed, Breathing, Eye };
inline constexpr EnumNames<Trouble, 4> troubleNames{{"airway", "swallowed", "breathing", "eye"}};

/// The first line, always, before any question: "Call your local emergency number." With the number
/// the family has entered: "Call your local emergency number: 112." No country's number is built
/// in. Source: safety.md EM-01, EM-05.
Sentence emergencyFirstLine(const std::string &number);

/// What one taps: "It may be in the mouth, nose, ear or throat".
Sentence troubleName(Trouble trouble);

/// What to do and what not, a few short sentences, in the order in which they are read. No
/// manoeuvres: those are learned from a trained instructor.
/// Sources: Airway safety.md EM-01, its last line EM-02; Swallowed EM-02, CN-02 (a coin may be a
/// button cell), BB-01 and MG-01 (hospital without waiting); Breathing EM-03, LA-01; Eye EM-04.
std::vector<Sentence> troubleWords(Trouble trouble);

/// "If it was swallowed: call ... now, even if your child seems well." Source: safety.md EM-02.
Sentence ifSwallowed();

/// "Call 112", "Call the poison line, 111": what stands on a button that dials.
Sentence callNumber(const std::string &number);
Sentence callPoisonLine(const std::string &number);

} // namespace lidlark::wording
