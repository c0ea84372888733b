#pragma once

#include "core/usecase/workplace.h"
#include "core/workbench/kept_build.h"
#include "core/workbench/one_more_box.h"
#include "core/workbench/sheet.h"

#include <vector>

namespace lidlark::usecase {

/// A build as the clinic keeps it, reckoned from the shelf as it stands now.
struct BuildSheet {
    workbench::KeptBuild build;
    /// Of the items in its boxes, in the order in which the boxes name them, then of those that
    /// were set aside for it and are in no box any more: those of the sheet.
    std::vector<workbench::Supply> supplies;
    workbench::SetAside aside; ///< What was bought for it before.
    /// What to buy and what is in each box, or all that is to be put right first.
    workbench::OrProblems<workbench::Sheet> sheet;
};

/// Errors: NotFound.
Result<BuildSheet> buildSheetOf(Workplace &therapist, const workbench::BuildId &build);

/// What more boxes of one kind would ask of the till, or what is to be put right first: to be said
/// before they are kept. @param boxes one or more. Errors: NotFound.
Result<workbench::OrProblems<workbench::OneMoreBox>>
moreBoxesIn(Workplace &therapist, const workbench::BuildId &build,
            const std::vector<workbench::KeptBox> &boxes);

} // namespace lidlark::usecase
