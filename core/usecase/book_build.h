#pragma once

#include "core/usecase/workplace.h"
#include "core/workbench/kept_build.h"

namespace lidlark::usecase {

/// What the build's sheet asks for was bought, today and at its prices: one act, kept as a whole or
/// not at all (job.md T19).
///
/// What the boxes still need is set aside for this build (core/workbench/purchase.h), and what is
/// left over, spares among it, is the stock of each supply. A box that is added later, or given
/// more, is bought for with what it needs beyond what was set aside; what a dropped or changed box
/// needs no more lies aside until the next purchase puts it back on the shelf. So nothing a build
/// does afterwards changes what lies on the shelf by itself. Of what came in new packs nobody has
/// written the lot yet: the supply has none until somebody does.
///
/// Errors: NotAllowed, NotFound, Invalid ("boxes: none yet", "bought: all of it", the first field
/// that has to be put right).
Outcome bookBuild(Workplace &therapist, const workbench::BuildId &build);

} // namespace lidlark::usecase
