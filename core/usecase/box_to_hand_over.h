#pragma once

#include "core/usecase/workplace.h"
#include "core/workbench/build.h"
#include "core/workbench/status_event.h"

#include <map>
#include <optional>
#include <set>

namespace lidlark::usecase {

/// A packed box that may be handed over.
struct BoxToHandOver {
    workbench::StatusSaid status;  ///< What is said of it.
    std::map<ItemId, int> lidList; ///< By the catalogue's items, for the family.
};

/// Errors: as issuePackedBox (core/usecase/issue_box.h).
Result<BoxToHandOver> boxToHandOver(Workplace &therapist, const workbench::BuildId &build,
                                    const std::string &code);

/// The box that a child has already.
struct LidListBefore {
    BoxId box;
    int number = 1;         ///< Of its revision.
    std::set<ItemId> items; ///< On its list.
};

/// Nothing: the child has none yet.
Result<std::optional<LidListBefore>> lidListBefore(Workplace &therapist, const std::string &child);

} // namespace lidlark::usecase
