#pragma once

#include "core/catalogue/item_kind.h"

namespace lidlark::catalogue {

/// Two versions of one item that were written at the same time: every tag, allergen and hazard of
/// either stands, and of every way to look after it the stricter. Words and measures are those of
/// @p one; the version is the higher.
ItemKind mostCareful(ItemKind one, const ItemKind &other);

/// A built-in item that measures otherwise, as a therapist says: tags, allergens, hazards and care
/// may be added, none can be lost. Words stay its own; the measures are the therapist's. The
/// version rises, so that what was allowed for the item as it was holds no more (events.md 8.3).
ItemKind corrected(const ItemKind &builtIn, const ItemKind &said);

} // namespace lidlark::catalogue
