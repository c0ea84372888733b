#pragma once

#include "core/catalogue/activity.h"
#include "core/catalogue/catalogue.h"
#include "core/catalogue/item_kind.h"

#include <optional>
#include <string>
#include <vector>

namespace lidlark::catalogue {

/// The entry as a catalogue file. An unfinished one is written as far as it goes, so that a draft
/// can be kept; what is empty and may not be is left for the loader to find. Without `reviews`, and
/// without what core/grading reckons of a line: both belong to words that somebody has checked.
std::string yamlOf(const Activity &activity);

/// The same for an item. Its tags are those written by hand and those its measures ask for: none of
/// these can be left out (design.md 4).
std::string yamlOf(const ItemKind &item);

/// What a draft of an item says it holds of what never goes into a box, so that the loader refuses
/// it; nothing: nobody has said, and the loader asks.
using Holds = std::optional<std::vector<Banned>>;
std::string yamlOf(const ItemKind &item, const Holds &holds);
Holds holdsIn(const SourceFile &file);

/// Reads a draft as far as it goes: what is missing or out of bounds has a harmless value.
Activity activityDraft(const SourceFile &file);
ItemKind itemDraft(const SourceFile &file);

} // namespace lidlark::catalogue
