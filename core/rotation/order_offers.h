#pragma once

#include "core/rotation/kite_roles.h"

#include <span>
#include <vector>

namespace lidlark::rotation {

/// One chosen entry as the order on the screen sees it. They come in the order of rank.
struct ToOrder {
    int worth = 0;
    KiteRoles roles{};
    bool isHeldBack = false;
};

/// The order on the screen, as places in @p chosen: the kite's roles 1 to 3 (as many roles filled
/// by different offers as can be, by the worthiest), then the others, the held-back ones last; by
/// worth, then rank, within each. Without a check-in there are no roles, and worth leads.
/// An alerting entry is never among the offers after the bedtime hour (kite_rules.h), so it never
/// comes first then.
std::vector<std::size_t> orderOffers(std::span<const ToOrder> chosen);

} // namespace lidlark::rotation
