#pragma once

#include "core/catalogue/item_kind.h"

namespace lidlark::catalogue {

/// The tags an item brings into every activity that uses it: all of its own, but for the towel,
/// which carries FACE only when it is used near the body.
/// Source: activities.md 1.3, "the cautions of an activity are at least all tags of its items,
/// towel apart".
inline TagSet tagsBroughtBy(const ItemKind &item)
{
    return item.id.value == "towel" ? item.tags.without({Tag::Face}) : item.tags;
}

} // namespace lidlark::catalogue
