#pragma once

#include "core/catalogue/catalogue.h"
#include "core/usecase/family.h"

#include <optional>
#include <vector>

namespace lidlark::usecase {

/// Something that must leave this home because of what somebody there must avoid.
struct TakeOut {
    ItemId item;
    int pieces = 0;                ///< As many as may still be there.
    std::optional<ItemId> instead; ///< What could be asked for in its place.
    bool operator==(const TakeOut &) const = default;
};

/// What of the box must go out of the house, as the box and the home sheet stand: everything of
/// latex, everything of wheat (job.md scenario 3; activities.md 1.4, LATEX "removes the item, not
/// just the activity", WHEAT "home kept free of it"). Empty when nobody must avoid anything, and as
/// soon as a count says that nothing of it is left. In the order of item ids.
std::vector<TakeOut> takeOutOf(const Family &family, const catalogue::Catalogue &catalogue);

} // namespace lidlark::usecase
