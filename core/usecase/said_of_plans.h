#pragma once

#include "core/store/event_repository.h"
#include "core/usecase/workplace.h"
#include "core/workbench/video_plan.h"

namespace lidlark::usecase {

/// What was said of one video plan, folded.
struct SaidOfPlan {
    std::optional<workbench::VideoPlan> plan;
    std::map<ItemId, workbench::AtHand> atHand;
};

/// The video plans of one box, with what has seen what read once for all of them.
class SaidOfPlans
{
public:
    static Result<SaidOfPlans> open(Workplace &workplace, const journal::Lane &lane);

    /// @param subject workbench::subjectOfPlan of its id.
    Result<SaidOfPlan> of(const std::string &subject);

private:
    SaidOfPlans(store::EventRepository repository, journal::Lane lane, journal::Seen seen);

    store::EventRepository m_repository;
    journal::Lane m_lane;
    journal::Seen m_seen;
};

} // namespace lidlark::usecase
