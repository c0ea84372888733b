#pragma once

#include "core/goals/agreed_goal.h"

#include <compare>
#include <optional>
#include <string>

namespace lidlark::goals {

/// Which wording of a goal. Levels are frozen once agreed: the key holds a hash of the words, so a
/// rating can never come to stand for other words than those it was given for. Two devices that
/// change the words at the same time make two versions of one number.
struct VersionKey {
    int number = 1;      ///< 1 + the largest its author had seen.
    std::string wording; ///< Of the goal's words and its five levels: 16 hexadecimal digits.
    auto operator<=>(const VersionKey &) const = default;
};

inline constexpr int mostVersions = 9'999;

/// The first eight bytes of the BLAKE2b of the words and the levels, in hexadecimal. When it is
/// reviewed, how it weighs and which skills it is about are not its wording.
std::string wordingOf(const child::Goal &goal);
VersionKey keyOf(const AgreedGoal &goal);

/// "2-0123456789abcdef".
std::string toText(const VersionKey &key);
std::optional<VersionKey> versionFromText(const std::string &text);

} // namespace lidlark::goals
