#pragma once

#include "core/usecase/island.h"
#include "core/usecase/workplace.h"
#include "core/workbench/build.h"

namespace lidlark::usecase {

/// The therapist hands over one box: whose it is, lid list revision 1, where it is, the home
/// sheets, the goals. One transaction.
Outcome issueBox(Workplace &therapist, const island::Family &family);

/// The therapist hands over one box of a build that is ready: the same, and its status with the
/// lots that were packed (core/workbench/box_status.h). The home sheet and the goals are said with
/// the family. A child who has a box already has the next revision of its lid list, counted as
/// packed. Errors: NotAllowed ("workbench"; "hand-over": a phone that packs for another and does
/// not know this child), NotFound (build, box), Invalid with the box named: not ready, nobody's,
/// with something that a home of the child must avoid, still with a child, to be cleaned or
/// replaced first, used no more, handed over before.
Outcome issuePackedBox(Workplace &therapist, const workbench::BuildId &build,
                       const std::string &code);

} // namespace lidlark::usecase
