#pragma once

#include "core/usecase/workplace.h"
#include "core/workbench/kept_build.h"
#include "core/workbench/sheet.h"

#include <vector>

namespace lidlark::usecase {

/// A build as the clinic keeps it, reckoned from the shelf as it stands now.
struct BuildSheet {
    workbench::KeptBuild build;
    /// Of the items in its boxes, in the order in which the boxes name them: those of the sheet.
    std::vector<workbench::Supply> supplies;
    /// What to buy and what is in each box, or all that is to be put right first.
    workbench::OrProblems<workbench::Sheet> sheet;
};

/// Errors: NotFound.
Result<BuildSheet> buildSheetOf(Workplace &therapist, const workbench::BuildId &build);

} // namespace lidlark::usecase
