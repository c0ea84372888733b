#pragma once

#include "core/usecase/video_session.h"
#include "mobile/bridge/household.h"

namespace lidlark::mobile {

/// Video sessions of the child on the table (core/usecase/video_session.h).

/// From today on, the next first.
Result<std::vector<usecase::VideoSession>> videoSessionsOf(Household &household);
/// The same, where the family has just been read.
Result<std::vector<usecase::VideoSession>> videoSessionsOf(Household &household,
                                                           const usecase::Family &family);
/// What may be planned for a day, on a therapist's phone.
Result<usecase::VideoChoices> videoChoicesOf(Household &household, Day day);
/// Everything that speaks against a plan.
std::vector<usecase::PlanProblem> problemsOf(Household &household, const workbench::VideoPlan &plan,
                                             const usecase::VideoChoices &choices);
Outcome planVideo(Household &household, const workbench::VideoPlan &plan);
Outcome callOffVideo(Household &household, const std::string &plan);
/// Whether a thing is at hand.
Outcome sayAtHand(Household &household, const std::string &plan, const ItemId &item, bool here);

} // namespace lidlark::mobile
