#pragma once

#include "core/journal/seen.h"

#include <optional>
#include <span>
#include <string>

namespace lidlark::play {

/// What an adult has said about one day of the week plan.
enum class Wish {
    Open, ///< Nothing (any more): the plan decides.
    Keep, ///< This activity stands.
    Free  ///< Nothing is planned for that day.
};
inline constexpr EnumNames<Wish, 3> wishNames{{"open", "keep", "free"}};

struct DayWish {
    Wish wish = Wish::Open;
    ActivityId activity; ///< For Keep.
    bool operator==(const DayWish &) const = default;
};

std::string fieldsOf(const ChildId &child, Day day, const DayWish &wish);

/// A register of (child, day), home lane. @returns nothing when open, never said, or malformed.
std::optional<DayWish> foldDayWish(std::span<const journal::Event> events,
                                   const journal::Seen &seen);

} // namespace lidlark::play
