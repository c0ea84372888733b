#pragma once

#include "core/journal/seen.h"

#include <optional>
#include <span>
#include <string>

namespace lidlark::box {

/// Where the box was last said to be, and by whom (job.md G4).
struct Place {
    std::string place; ///< "home", another home's id, "school", "away".
    std::string words; ///< As a person reads it: "at Mum's".
    std::string author;
    DayPart when;
    bool operator==(const Place &) const = default;
};

std::string fieldsOfPlace(const std::string &place, const std::string &words);

/// The standing statement; among concurrent ones the larger (instant, device, counter).
std::optional<Place> foldPlace(std::span<const journal::Event> events, const journal::Seen &seen);

} // namespace lidlark::box
