#pragma once

#include "core/journal/seen.h"

#include <cstddef>
#include <optional>
#include <span>
#include <string>

namespace lidlark::play {

/// The longest line a family may keep, in characters as a person counts them [P].
inline constexpr std::size_t longestWay = 140;

/// A family's own way of playing an activity, in one line (job.md F12). It stays in the home lane.
struct OurWay {
    std::string words;
    std::string author;
    DayPart when;
    bool operator==(const OurWay &) const = default;
};

/// @param words empty: taken off again.
std::string fieldsOfOurWay(const ChildId &child, const ActivityId &activity,
                           const std::string &words);

/// A register of (child, activity), home lane. @returns nothing when never said, taken off, or
/// malformed.
std::optional<OurWay> foldOurWay(std::span<const journal::Event> events, const journal::Seen &seen);

} // namespace lidlark::play
