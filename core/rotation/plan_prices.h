#pragma once

#include "core/rotation/horizon_limits.h"

#include <cstdint>
#include <span>
#include <vector>

namespace lidlark::rotation {

/// An entry and what it is worth at some prices.
struct PricedEntry {
    std::int64_t price = 0;
    std::size_t entry = 0;
};

/// What is decided of a plan: some entries are in it, some may be, the others are not.
struct Decided {
    std::vector<std::size_t> in;
    std::vector<std::size_t> open;
};

/// A bound on all plans that agree with what is decided, and where it comes from.
struct PlanLook {
    std::int64_t bound = 0;          ///< In priceUnit.
    std::vector<PricedEntry> order;  ///< The open ones, those taken first.
    std::size_t taken = 0;           ///< How many of them are.
    std::int64_t leastTaken = 0;     ///< The lowest price of those taken.
    std::int64_t mostLeft = 0;       ///< The highest of the others.
    std::vector<std::int64_t> slack; ///< Of each limit: what in and taken leave; curves: see step.
};

/// Prices of a minute on each curve and of each limit of a horizon, in 1/4096 of a value, never
/// below zero; and the bound on plans that they give.
///
/// With prices b for the minutes on the curves G, m for the limits c, a plan S is worth at most
///
///     sum of max over x of (G_s(x) - b_s x)  +  sum of m_j c_j
///     + sum over S of p,  where p = worth + sum of b_s minutes - sum of m_j amounts of the entry:
///
/// the first line pays for what S puts on the curves at the price b and for what it uses of the
/// limits. The last sum is at most that of the entries in S already and of as many open ones with
/// the largest p as there are places left. So every prices bound every plan from above, however
/// they were come by; the best ones give the optimum of the linear relaxation, where each limit and
/// curve may be kept by fractions of entries. They are looked for by deflected subgradient steps in
/// whole numbers, the same everywhere. A look costs O(uses of the open entries).
/// Source: P. M. Camerini, L. Fratta, F. Maffioli, "On improving relaxation methods by modified
/// gradient techniques", Mathematical Programming Study 3 (1975), from memory: the deflection.
class PlanPrices
{
public:
    using Prices = std::vector<std::int64_t>;

    /// @param problem,limits must outlive this.
    PlanPrices(const MenuProblem &problem, const HorizonLimits &limits);

    /// Half of each first slope, and nothing for the limits.
    [[nodiscard]] Prices first() const;
    /// @pre at least as many are open as places are left.
    void look(const Prices &prices, const Decided &decided, PlanLook &look) const;
    /// Moves the prices, and the direction that is carried on from step to step.
    /// @param distance from the bound to the value aimed at, at most; in priceUnit.
    /// @returns false when there is nowhere to go: the look is the best.
    bool step(Prices &prices, Prices &direction, const PlanLook &look, std::int64_t distance) const;

private:
    [[nodiscard]] std::int64_t priceOf(std::size_t entry, const Prices &prices) const;

    const MenuProblem &m_problem;
    const HorizonLimits &m_limits;
    std::vector<std::int64_t> m_most; ///< Of each price, so that no sum overflows.
    std::vector<int> m_shift;         ///< Of each slack, so that no square overflows.
};

} // namespace lidlark::rotation
