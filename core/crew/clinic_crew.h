#pragma once

#include "core/crew/crew_event.h"
#include "core/crew/role.h"

#include <string_view>

namespace lidlark::crew {

/// The crew in which a therapist's devices, and those of who packs with her, share what the clinic
/// keeps: the id where a box's crew has its box's, and the scope of both its lanes (FORMAT.md 10).
/// No box has it: a box's id is drawn by chance.
inline constexpr std::string_view clinicCrew = "clinic";

/// Whether somebody of @p role may be asked into the crew of @p box: into the clinic's only who
/// packs there, as a therapist.
inline bool fitsInto(std::string_view box, Role role)
{
    return box != clinicCrew || role == Role::Therapist;
}

/// The lane in which that crew is told, as a box's is in the box's lane.
inline bool tellsTheClinicsCrew(const journal::Lane &lane)
{
    return lane.kind == journal::LaneKind::Box && lane.scope == clinicCrew;
}

/// What may be said in that lane: who is in, which keys there are, what is held. It is no box.
inline bool mayStandInTheClinicsCrew(const journal::Event &event)
{
    return isOfTheCrew(event) || event.kind == journal::Kind::Met;
}

} // namespace lidlark::crew
