#pragma once

#include "core/rotation/candidate.h"
#include "core/rotation/menu.h"

#include <span>
#include <vector>

namespace lidlark::rotation {

inline constexpr std::size_t planDays = 7;

/// What adults have said about one day.
struct DayAsked {
    enum class Wish { Open, Keep, Free };
    Wish wish = Wish::Open;
    std::vector<std::size_t> kept; ///< For Keep: places among the candidates.
};

struct PlannedDay {
    std::vector<std::size_t> candidates; ///< Places among the candidates, the first in rank first.
    DayAsked::Wish wish = DayAsked::Wish::Open;
};

/// Seven days from today on.
struct WeekPlan {
    std::vector<PlannedDay> days; ///< `planDays`; open ones are empty where nothing was left.
    int value = 0;                ///< Tenths: worth and coverage of what was not kept by hand.
    int bound = 0;                ///< No plan for the open days is worth more.
    bool proven = true;
    std::int64_t nodes = 0;
};

/// The best plan for the days left open, each activity at most once in the week, and the week's
/// coverage shared by all of it (design.md 5). Worths are those of a menu without a check-in and
/// without life words; "played in the last 2 days" is no reason against a later day of the week: it
/// only keeps the activity from coming too soon (spread_days.h), which is where the days of a plan
/// are put in order. On each day families differ and at most one entry makes a mess of 2, where
/// that can be had; else these give way, and then the week is planned for fewer days.
/// Deterministic: the search counts its steps, never the time. @p perDay 1 to 3.
/// @param asked `planDays` of them.
WeekPlan planWeek(std::span<const Candidate> candidates, const Question &question,
                  std::span<const DayAsked> asked, int perDay);

} // namespace lidlark::rotation
