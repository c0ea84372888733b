#pragma once

#include "core/usecase/workplace.h"
#include "core/workbench/fitted_box.h"

#include <string>
#include <vector>

namespace lidlark::usecase {

/// A box of a design, filled in for a child of this store from what all homes of the child must
/// avoid and who lives there (core/workbench/fitted_box.h). Nothing is kept: it is shown first.
/// Errors: NotFound (build, design, child), Invalid (the build has a box for that child).
Result<workbench::KeptBox> boxForChild(Workplace &therapist, const workbench::BuildId &build,
                                       const workbench::DesignId &design,
                                       const std::string &childAlias);

/// The same for several children, each box with a code of its own. Errors: of the first that is
/// refused.
Result<std::vector<workbench::KeptBox>> boxesForChildren(Workplace &therapist,
                                                         const workbench::BuildId &build,
                                                         const workbench::DesignId &design,
                                                         const std::vector<std::string> &children);

/// The same for a box that the build has: its code and its hand stay, what goes in is filled in
/// anew.
Result<workbench::KeptBox> refilledFor(Workplace &therapist, const workbench::BuildId &build,
                                       const workbench::KeptBox &box,
                                       const std::string &childAlias);

/// Boxes of a design that are nobody's yet. @param count 1 or more.
/// Errors: NotFound (build, design).
Result<std::vector<workbench::KeptBox>> boxesForNobody(Workplace &therapist,
                                                       const workbench::BuildId &build,
                                                       const workbench::DesignId &design,
                                                       int count);

/// "K1", "K2" ...: the first that no box of the build has, and none that was ever handed over.
Result<std::vector<std::string>> freeCodes(Workplace &therapist, const workbench::BuildId &build,
                                           int count);

} // namespace lidlark::usecase
