#pragma once

#include "core/usecase/family.h"

#include <optional>
#include <set>
#include <string>

namespace lidlark::usecase {

/// What is asked of the menu, besides what the store knows.
struct MenuRequest {
    std::string child;             ///< Alias.
    std::optional<Day> day;        ///< Absent: today.
    std::optional<PartOfDay> part; ///< Absent: now.
    std::optional<checkin::Kite> kite;
    std::optional<int> minutes; ///< Out, play and back of each offer together.
    safety::Room room;
    rotation::Filters filters;
    int offers = 3;
    std::set<ActivityId> without; ///< "Three others": not these.
    /// The box is not at hand, whatever was last said of it: this phone's own word for now.
    bool boxNotHere = false;
};

/// Today's menu with everything that was held back and why.
struct TodayMenu {
    Family family;
    DayPart when;
    rotation::Menu menu;
    safety::Gated gated;
};

/// The gate over the whole catalogue, then the exact optimum over what it let through.
/// Changes nothing; `markOffered` keeps that the menu was shown.
Result<TodayMenu> suggestToday(Workplace &workplace, const MenuRequest &request);

/// Remembers today, and not when today, as the last day on which these stood in a menu (design.md
/// 5, waiting). A guest keeps nothing.
Outcome markOffered(Workplace &workplace, const TodayMenu &menu);

/// One admitted activity at random: never one of @p without, so never the same twice running.
/// @returns NotFound when nothing is left.
Result<safety::Admitted> anythingAtAll(Workplace &workplace, const MenuRequest &request);

} // namespace lidlark::usecase
