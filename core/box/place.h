#pragma once

#include "core/journal/meetings.h"

#include <optional>
#include <span>
#include <string>

namespace lidlark::box {

/// One statement of where the box is.
struct PlaceSaid {
    std::string place; ///< A home's id, "school", "away".
    std::string words; ///< As a person reads it: "at Mum's".
    std::string author;
    DayPart when;
    bool operator==(const PlaceSaid &) const = default;
};

/// Where the box was last said to be, and by whom (job.md G4).
struct Place : PlaceSaid {
    /// Said elsewhere, and nobody can tell which was the last: both are shown (events.md 5).
    std::optional<PlaceSaid> orElse;
    bool operator==(const Place &) const = default;

    [[nodiscard]] bool mayBeAt(const std::string &where) const
    {
        return place == where || (orElse && orElse->place == where);
    }
};

std::string fieldsOfPlace(const std::string &place, const std::string &words);

/// The standing statement; among concurrent ones the larger (instant, device, counter), and beside
/// it the largest within the margin that names another place.
std::optional<Place> foldPlace(std::span<const journal::Event> events,
                               const journal::Meetings &meetings);

} // namespace lidlark::box
