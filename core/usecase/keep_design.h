#pragma once

#include "core/usecase/workplace.h"
#include "core/workbench/kept_design.h"

namespace lidlark::usecase {

/// Keeps what belongs in a kind of box. @param design without an id: a new one.
/// @returns its id. Errors: NotAllowed, Invalid with the field named.
Result<workbench::DesignId> keepDesign(Workplace &therapist, workbench::Design design);

/// All that are in use, by id.
Result<workbench::Designs> keptDesigns(Workplace &therapist);

/// The design is used no more. Errors: NotAllowed, NotFound.
Outcome removeDesign(Workplace &therapist, const workbench::DesignId &id);

} // namespace lidlark::usecase
