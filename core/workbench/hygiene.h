#pragma once

#include "core/catalogue/catalogue.h"
#include "core/workbench/box_status.h"

namespace lidlark::workbench {

/// What an item that came back needs before another child has it.
enum class Care { Clean, Replace };

/// Single-child, used up, used once, or not to be washed: replaced; the rest is cleaned
/// (job.md T8; safety.md HY-01). An item nobody knows is replaced: not knowing refuses.
/// @param kind null: not in the catalogue.
Care careFor(const catalogue::ItemKind *kind);

struct StillToDo {
    ItemId item;
    Care care = Care::Clean;
    bool operator==(const StillToDo &) const = default;
};

/// What is left to do, to be cleaned first and then to be replaced, each by item. Whatever was
/// inside counts; replacing does for cleaning, never the other way.
std::vector<StillToDo> stillToDo(const BoxStatus &status, const catalogue::Catalogue &catalogue);

/// Whether a box may be handed over, and if not, why.
enum class IssueBar { None, StillOut, ToBeTended, Retired };
IssueBar issueBarOf(const std::optional<BoxStatus> &status, const catalogue::Catalogue &catalogue);

} // namespace lidlark::workbench
