#pragma once

#include "core/rotation/session_arc.h"
#include "core/usecase/family.h"
#include "core/workbench/session_parts.h"

#include <optional>
#include <string>
#include <vector>

namespace lidlark::usecase {

/// Why an activity cannot stand in a plan.
enum class NotInPlan {
    Unknown,    ///< The catalogue has none of that name.
    NotOnVideo, ///< Its entry says that it is nothing for a camera.
    NotOnList,  ///< It needs a thing that is not on the family's lid list.
    OnItsWay,   ///< It needs a thing that nobody there has counted in yet.
    ToTakeOut,  ///< It needs a thing that a new lid list removes.
    HeldBack    ///< The gate lets it not through, whatever the lid list says.
};

struct PlanProblem {
    ActivityId activity;
    NotInPlan why = NotInPlan::Unknown;
    ItemId item;                         ///< Which thing; empty where it is about none.
    std::vector<safety::Reason> reasons; ///< For HeldBack.
};

/// What may be planned from a family's confirmed lid list: only what the list that they have
/// confirmed and the one in force share (job.md scenario 7, T14).
struct VideoChoices {
    Family family;
    int revision = 1;
    bool awaitsConfirmation = false; ///< A new list is out there, and not yet confirmed.
    std::vector<safety::Admitted> open;
    rotation::SessionArc suggested;
};

/// Errors: NotFound (child), NotAllowed (a therapist's phone only), Invalid (no lid list; a day
/// before today).
Result<VideoChoices> videoChoices(Workplace &workplace, const std::string &childAlias, Day day);

/// Everything that speaks against a plan; empty: nothing.
std::vector<PlanProblem> problemsOf(const workbench::VideoPlan &plan, const VideoChoices &choices,
                                    const catalogue::Catalogue &catalogue);

/// Writes a plan, or writes it anew. @param plan its id empty: a new one; home and revision are
/// filled in. @returns its id.
/// Errors: as videoChoices; Invalid: "activity: slow-oars" where problemsOf names one.
Result<std::string> planVideo(Workplace &workplace, const std::string &childAlias,
                              workbench::VideoPlan plan);
/// It will not be. Errors: NotFound, NotAllowed.
Outcome callOffVideo(Workplace &workplace, const std::string &childAlias, const std::string &plan);

/// A session as both sides see it.
struct VideoSession {
    workbench::VideoPlan plan;
    std::vector<workbench::SessionPart> parts;
    std::vector<workbench::ThingNeeded> things;
    bool listHasChanged = false; ///< The lid list is another one than the plan was made from.
};

/// From today on, the next first, without those called off. On a family's phone those of its home.
Result<std::vector<VideoSession>> videoSessions(Workplace &workplace, const Family &family,
                                                Day today);

/// Somebody of the home says whether a thing is at hand. Errors: NotFound (child; plan; a thing
/// that the plan does not need), NotAllowed (a guest).
Outcome sayAtHand(Workplace &workplace, const std::string &childAlias, const std::string &plan,
                  const ItemId &item, bool here);

} // namespace lidlark::usecase
