#pragma once

#include "core/catalogue/activity.h"
#include "core/catalogue/findings.h"

#include <map>

namespace lidlark::catalogue {

/// Refuses an activity that says less than it holds: a tag of an item it uses, of a piece it makes,
/// or of the swap in an item's place; a floor below that of a tag; an item that can be divided
/// without a word about the pieces; a standing way with what is only for sitting down.
/// Source: activities.md 1.3 ("the loader ... work this out and refuse less") and 1.4 (SHARP, STRAW
/// and FORK are seated the whole time); safety.md PT-01 (pointed things are for sitting down),
/// BL-03 (what becomes of the balloon).
void checkCautions(const Activity &activity, const std::map<ItemId, ItemKind> &items,
                   Findings &findings);

} // namespace lidlark::catalogue
