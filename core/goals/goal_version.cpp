#include "core/goals/goal_version.h"

#include "core/base/digest.h"

#include <charconv>

namespace lidlark::goals {

std::string wordingOf(const child::Goal &goal)
{
    // Each with its length before it: no two wordings run together.
    std::string all = std::to_string(goal.words.size()) + ':' + goal.words;
    for (const std::string &level : goal.levels)
        all += std::to_string(level.size()) + ':' + level;
    const Digest digest = blake2b(all);
    return hexOf(std::span(digest).first(8));
}

VersionKey keyOf(const AgreedGoal &goal)
{
    return {goal.version, wordingOf(goal)};
}

std::string toText(const VersionKey &key)
{
    return std::to_string(key.number) + '-' + key.wording;
}

std::optional<VersionKey> versionFromText(const std::string &text)
{
    const std::size_t dash = text.find('-');
    if (dash == std::string::npos)
        return std::nullopt;
    VersionKey key;
    const char *end = text.data() + dash;
    const auto [stopped, failed] = std::from_chars(text.data(), end, key.number);
    key.wording = text.substr(dash + 1);
    if (failed != std::errc() || stopped != end || key.number < 1 || key.number > mostVersions ||
        key.wording.size() != 16 || !bytesFromHex(key.wording))
        return std::nullopt;
    return toText(key) == text ? std::optional(key) : std::nullopt;
}

} // namespace lidlark::goals
