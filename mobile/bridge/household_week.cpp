#include "mobile/bridge/household.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

namespace {

/// The days to come are planned for everybody who lives there.
usecase::WeekRequest weekOf(const QString &child)
{
    return {toCore(child), {}, {}, 1};
}

} // namespace

Result<usecase::Week> Household::week()
{
    return usecase::planWeek(*m_workplace, weekOf(m_child));
}

Result<safety::Admitted> Household::anotherFor(const usecase::Week &week, Day day,
                                               const std::set<ActivityId> &without)
{
    return usecase::anotherFor(*m_workplace, weekOf(m_child), week, day, without);
}

Outcome Household::wishForDay(Day day, const play::DayWish &wish)
{
    return usecase::wishForDay(*m_workplace, toCore(m_child), day, wish);
}

Outcome Household::keepWeek(const usecase::Week &week)
{
    return usecase::keepWeek(*m_workplace, week);
}

Outcome Household::openWeek(const usecase::Week &week)
{
    return usecase::openWeek(*m_workplace, week);
}

} // namespace lidlark::mobile
