#include "core/rotation/order_offers.h"

#include <algorithm>
#include <numeric>
#include <tuple>

namespace lidlark::rotation {

namespace {

constexpr std::size_t noRole = kiteRoleCount;

/// Which role each offer takes: noRole when none is left for it.
struct Casting {
    std::vector<std::size_t> roleOf;
    std::size_t filled = 0;
    int worth = 0; ///< Of the offers that have a role.
};

/// Tries every way to give role @p role and those after it, and keeps the best; the first of
/// equals, where offers of a lower place are tried first.
void cast(std::span<const ToOrder> chosen, std::size_t role, const Casting &soFar, Casting &best)
{
    if (role == kiteRoleCount) {
        if (std::tie(soFar.filled, soFar.worth) > std::tie(best.filled, best.worth))
            best = soFar;
        return;
    }
    for (std::size_t i = 0; i < chosen.size(); ++i) {
        if (!chosen[i].roles[role] || soFar.roleOf[i] != noRole)
            continue;
        Casting next = soFar;
        next.roleOf[i] = role;
        next.filled += 1;
        next.worth += chosen[i].worth;
        cast(chosen, role + 1, next, best);
    }
    cast(chosen, role + 1, soFar, best);
}

} // namespace

std::vector<std::size_t> orderOffers(std::span<const ToOrder> chosen)
{
    const Casting nobody{std::vector<std::size_t>(chosen.size(), noRole)};
    Casting best = nobody;
    cast(chosen, 0, nobody, best);
    const auto key = [&](std::size_t place) {
        return std::tuple(chosen[place].isHeldBack, best.roleOf[place], -chosen[place].worth,
                          place);
    };
    std::vector<std::size_t> order(chosen.size());
    std::iota(order.begin(), order.end(), 0);
    std::ranges::sort(order, {}, key);
    return order;
}

} // namespace lidlark::rotation
