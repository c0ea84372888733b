#pragma once

#include "core/checkin/kite.h"
#include "core/journal/seen.h"

#include <optional>
#include <span>
#include <string>

namespace lidlark::checkin {

/// One check-in as it is kept: day and part of day only (checkin.md 9). It names no play and its
/// event's instant is the first moment of the part, so it cannot be placed in time more closely.
struct CheckIn {
    std::string id;
    ChildId child;
    DayPart when;
    Kite before = Kite::Bag;
    ShownBy shownBy = ShownBy::Child;
    std::optional<Kite> after; ///< With `activity`: the pair of checkin.md 7.
    ActivityId activity;       ///< Only when both were given.
    bool operator==(const CheckIn &) const = default;
};

std::string fieldsOf(const CheckIn &checkIn);
/// "That wasn't me": the entry goes, everywhere (checkin.md 6).
std::string fieldsOfRemoval(const std::string &id, const ChildId &child);

/// What an entry is about within its lane.
std::string subjectOf(const std::string &id, const ChildId &child);

/// @param events those of one check-in's subject. @returns nothing when removed or malformed.
std::optional<CheckIn> foldCheckIn(std::span<const journal::Event> events,
                                   const journal::Seen &seen);

} // namespace lidlark::checkin
