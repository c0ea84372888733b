#include "core/usecase/said_of_plans.h"

namespace lidlark::usecase {

Result<SaidOfPlans> SaidOfPlans::open(Workplace &workplace, const journal::Lane &lane)
{
    store::EventRepository repository(workplace.database);
    const auto mets = repository.standingOfSubject({lane, "met"});
    if (!mets)
        return mets.error();
    return SaidOfPlans(std::move(repository), lane, journal::Seen(*mets));
}

Result<SaidOfPlan> SaidOfPlans::of(const std::string &subject)
{
    const auto events = m_repository.standingOfSubject({m_lane, subject});
    if (!events)
        return events.error();
    return SaidOfPlan{workbench::foldVideoPlan(*events, m_seen),
                      workbench::foldAtHand(*events, m_seen)};
}

SaidOfPlans::SaidOfPlans(store::EventRepository repository, journal::Lane lane, journal::Seen seen)
    : m_repository(std::move(repository)), m_lane(std::move(lane)), m_seen(std::move(seen))
{
}

} // namespace lidlark::usecase
