#pragma once

#include "core/store/clinic_repository.h"
#include "core/usecase/workplace.h"
#include "core/workbench/kept_build.h"

namespace lidlark::usecase {

/// Begins boxes that are packed together, without a box yet. @param build its name, day, currency
/// and spares; an id and boxes are passed over.
/// @returns its id. Errors: NotAllowed, Invalid with the field named.
Result<workbench::BuildId> startBuild(Workplace &therapist, workbench::KeptBuild build);

/// Changes what is said of a build: its name, day, currency and spares. @param build by its id;
/// boxes and purchases are passed over. Errors: as above, and NotFound.
Outcome changeBuild(Workplace &therapist, workbench::KeptBuild build);

/// All builds, newest first.
Result<std::vector<store::BuildRow>> keptBuilds(Workplace &therapist);

/// Keeps one box of a build, new or changed: a child's alias, or nobody's ("spare"). What the homes
/// of a child of this store must avoid is added to what the box avoids. What holds an
/// avoided thing and is swapped or left out has the allergy as its reason; for every other
/// departure from the design one must be given (job.md T3).
/// Errors: NotAllowed, NotFound (build, design), Invalid with box and field named: what a box
/// cannot hold, an item its home must avoid (no reason overrides that), one for the other hand, a
/// box that is with a child or used no more.
Outcome keepBox(Workplace &therapist, const workbench::BuildId &build, workbench::KeptBox box);

/// Several in a row, until one is refused: those before it are kept.
Outcome keepBoxes(Workplace &therapist, const workbench::BuildId &build,
                  const std::vector<workbench::KeptBox> &boxes);

/// The box is not part of the build any more. Errors: NotAllowed, NotFound.
Outcome dropBox(Workplace &therapist, const workbench::BuildId &build, const std::string &code);

} // namespace lidlark::usecase
