#pragma once

#include "core/play/plan_events.h"
#include "core/usecase/family.h"

#include <set>
#include <string>
#include <vector>

namespace lidlark::usecase {

struct WeekRequest {
    std::string child;       ///< Alias.
    std::optional<Day> from; ///< Absent: today.
    safety::Room room;       ///< Unanswered: everybody who lives there.
    int perDay = 1;          ///< 1 to 3.
};

/// One day of the week as it stands.
struct WeekDay {
    Day day;
    play::Wish wish = play::Wish::Open;
    std::vector<safety::Admitted> planned;
    /// An activity that was kept and that the gate does not let through now, with why; else none.
    std::optional<safety::HeldBack> notNow;
    bool played = false; ///< Something of what is planned was played that day.
};

/// Seven days from today on. Nothing in it is owed: a day that goes by is not spoken of.
struct Week {
    Family family;
    std::vector<WeekDay> days;
    int value = 0; ///< Tenths, of the days left open.
    int bound = 0;
    bool proven = true;
};

/// The best week (core/rotation/week_plan.h) around what adults have kept or left free.
/// Errors: as loadFamily; Invalid (perDay).
Result<Week> planWeek(Workplace &workplace, const WeekRequest &request);

/// What would stand on @p day if nothing of @p without did, with all other days as @p week has
/// them: the next best. @returns NotFound when nothing else is left.
Result<safety::Admitted> anotherFor(Workplace &workplace, const WeekRequest &request,
                                    const Week &week, Day day, const std::set<ActivityId> &without);

/// An adult keeps an activity on a day, leaves the day free, or gives it back to the plan.
/// Errors: NotFound (child, activity), Invalid (a day gone by, or more than a week ahead; a guest,
/// who has no say over days to come).
Outcome wishForDay(Workplace &workplace, const std::string &childAlias, Day day,
                   const play::DayWish &wish);

/// Keeps every day of the week as it stands, all or none. Days left free stay free.
Outcome keepWeek(Workplace &workplace, const Week &week);
/// Gives every day back to the plan.
Outcome openWeek(Workplace &workplace, const Week &week);

} // namespace lidlark::usecase
