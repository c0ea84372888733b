#pragma once

#include "core/play/grading_events.h"
#include "core/play/plan_events.h"
#include "core/store/database.h"

#include <map>

namespace lidlark::store {

/// How activities are played, and what is said about the days to come.
class PlanRepository
{
public:
    explicit PlanRepository(Database &database) : m_database(database) {}

    /// How this child played each activity last, in that home.
    Result<std::map<ActivityId, play::GradingUsed>> gradings(const HomeId &home,
                                                             const ChildId &child);
    /// What the therapist has pinned for this box.
    Result<std::map<ActivityId, play::GradingUsed>> gradingPins(const BoxId &box);
    /// What adults of that home have said about days from @p since on.
    Result<std::map<Day, play::DayWish>> dayWishes(const HomeId &home, const ChildId &child,
                                                   Day since);

private:
    Database &m_database;
};

} // namespace lidlark::store
