#pragma once

#include "core/base/enum_names.h"

#include <span>
#include <string>
#include <string_view>

namespace lidlark::reminder {

/// A moment of a family's own day that play can hang on (job.md F10).
enum class Hook { AfterBath, AfterTea, BeforeBed, AfterSchool, Own };
inline constexpr EnumNames<Hook, 5> hookNames{
    {"after-bath", "after-tea", "before-bed", "after-school", "own"}};

/// What a family has asked to be reminded of: once a day for the whole phone, off at the start.
struct Reminder {
    bool on = false;
    Hook hook = Hook::AfterBath;
    std::string ownLine;            ///< "After the ferry": with Hook::Own.
    int minuteOfDay = 18 * 60 + 30; ///< Local time, 0 to 1439.
    bool operator==(const Reminder &) const = default;
};

/// When such a moment usually is. Common practice, no source: every family sets its own.
int usualMinute(Hook hook);

/// Longest own line, in bytes: one short line on a locked screen, in any alphabet.
inline constexpr std::size_t longestOwnLine = 160;

/// Whether @p line holds one of @p names as a word of its own. Visitors see a locked screen, so a
/// reminder names nobody (job.md D9). Names of one letter are told apart by its case: "A" is a
/// child, "a" is a word.
bool namesSomebody(std::string_view line, std::span<const std::string> names);

} // namespace lidlark::reminder
