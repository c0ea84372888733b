#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

namespace lidlark::rotation {

/// What one day of a plan asks of the hands.
struct DayUse {
    std::uint32_t families = 0; ///< A bit for each main skill that is a family (the first).
    std::uint32_t skills = 0;   ///< A bit for each main skill.
    int earliest = 0;           ///< The day, counted from 0, from which it is not too soon again.
};

/// Lays what is planned over the days that are open, so that practice is spread: what a plan is
/// worth does not depend on the day, so its days may change places. The first of these that
/// differs decides (development.md g, rules 1, 2 and 5):
/// 1. as few as can be stand too soon after they were last played;
/// 2. as few neighbouring days as can be share a family;
/// 3. as few as can be share a main skill;
/// then the order of @p planned. Every order is tried: at most 7 open days.
/// @param planned at most as many as there are open days; the first open days are filled.
/// @param days one for each day: what stands there already, or nothing where it is open. A day that
/// is kept free is a DayUse that asks for nothing.
/// @returns for each of @p planned, its day.
std::vector<std::size_t> spreadOver(std::span<const DayUse> planned,
                                    std::span<const std::optional<DayUse>> days);

} // namespace lidlark::rotation
