#pragma once

#include "core/catalogue/tag.h"
#include "core/usecase/workplace.h"

namespace lidlark::usecase {

/// The tags of what must not go into a child's box, since somebody in a home where the child lives
/// must avoid it (core/safety/avoided_tags.h). Of every such home that this phone knows: one box
/// goes to and fro.
Result<catalogue::TagSet> avoidedForChild(Workplace &workplace, const ChildId &child);

/// Whether @p item carries one of these tags. An item of a newer catalogue is not known to.
bool isAvoided(const catalogue::Catalogue &catalogue, const ItemId &item,
               const catalogue::TagSet &avoided);

} // namespace lidlark::usecase
