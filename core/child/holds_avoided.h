#pragma once

#include "core/catalogue/tag.h"
#include "core/child/avoided.h"

#include <algorithm>
#include <set>

namespace lidlark::child {

/// Whether a thing with @p tags holds something of what must be avoided.
inline bool holdsAny(catalogue::TagSet tags, const std::set<Avoided> &avoided)
{
    return std::any_of(avoided.begin(), avoided.end(),
                       [tags](Avoided what) { return tags.has(tagOf(what)); });
}

} // namespace lidlark::child
