#pragma once

#include <string>
#include <string_view>

namespace lidlark::child {

/// Facts of the home whose value is a phone number the family has entered (safety.md EM-05).
inline constexpr std::string_view emergencyNumberFact = "emergency-number";
inline constexpr std::string_view poisonLineFact = "poison-line";

/// 1 to 20 characters: digits, spaces, + and -, with at least two digits. Which numbers exist
/// nobody knows here: no country's plan is built in.
bool isPhoneNumber(std::string_view text);

/// What a phone dials: the digits, with the + of a number from abroad. "+44 20-7946" ->
/// "+44207946".
std::string dialled(std::string_view number);

} // namespace lidlark::child
