#pragma once

#include "core/base/enum_names.h"

#include <compare>
#include <optional>
#include <string>
#include <string_view>

namespace lidlark::journal {

/// Lanes have a key each; a role reads a lane because it holds the key (events.md 4).
enum class LaneKind { Box, Safety, Home, CheckIns, Goals, Notes, Shared, Clinic };
inline constexpr EnumNames<LaneKind, 8> laneKindNames{
    {"box", "safety", "home", "check-ins", "goals", "notes", "shared", "clinic"}};

/// One lane of one box or home.
struct Lane {
    LaneKind kind = LaneKind::Box;
    std::string scope; ///< The box's id, or the home's.

    auto operator<=>(const Lane &) const = default;
};

/// "box:b-fin".
std::string toText(const Lane &lane);
std::optional<Lane> laneFromText(std::string_view text);

} // namespace lidlark::journal
