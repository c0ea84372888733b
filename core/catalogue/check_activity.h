#pragma once

#include "core/catalogue/activity.h"
#include "core/catalogue/findings.h"

#include <map>

namespace lidlark::catalogue {

/// Checks what the fields of one activity say about each other and about the items it names:
/// activities.md 1.1 (words, counts, access, put-back, claim), 1.3 (the cautions are at least all
/// tags of the items) and 1.4 (the floor is at least that of every tag).
void checkActivity(const Activity &activity, const std::map<ItemId, ItemKind> &items,
                   Findings &findings);

} // namespace lidlark::catalogue
