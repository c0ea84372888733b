#pragma once

#include "core/rotation/best_sums.h"
#include "core/rotation/gain_bound.h"
#include "core/rotation/partial_menu.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace lidlark::rotation {

/// What a minute on each curve, a piece of each item and the place of each family cost: multipliers
/// of a Lagrangian relaxation, in 1/4096 of a value, never below zero.
struct Prices {
    std::vector<std::int64_t> curve;
    std::vector<std::int64_t> item;
    std::vector<std::int64_t> family;
};

/// A bound on every choice that knows of the stock, the families and the bend of the curves all at
/// once.
///
/// With prices b for the minutes on the curves G, m for the pieces of stock c and f for the
/// families, any choice S that keeps to all limits is worth at most
///
///     sum of max over x of (G_s(x) - b_s x)  +  sum of m_j c_j  +  sum of f
///     + sum over S of (worth + sum of b_s minutes - sum of m_j pieces - f of its family):
///
/// the first line pays for what S puts on the curves at the price b, the second for the pieces and
/// the family's one place that S uses. The last sum is at most that of the best choice of so many
/// entries within the minutes and the mess, which best_sums.h finds exactly. So every prices give a
/// bound; good ones are looked for by subgradient steps, in whole numbers, the same everywhere.
/// Source: M. L. Fisher, "The Lagrangian relaxation method for solving integer programming
/// problems", Management Science 27 (1981), from memory: the relaxation and its steps.
class PriceBound
{
public:
    /// @param problem,rules must outlive this.
    PriceBound(const MenuProblem &problem, const ChoiceRules &rules);

    /// Looks for prices that bring the bound down, for at most so many steps.
    /// @param value of a choice that is known; nothing: none is.
    void lower(std::optional<int> value, int steps);

    /// No choice is worth more; nothing: no choice exists.
    [[nodiscard]] std::optional<int> bound() const;
    /// Settles the prices for `worthwhile`.
    void settle();
    /// Once settled: leaves those out of @p open with which no completion of @p menu adds more than
    /// @p beyond; the others keep their order.
    /// @returns those that stay.
    std::span<Scored> worthwhile(const PartialMenu &menu, std::span<Scored> open, int beyond) const;
    /// The entries that a choice worth @p value or more can have, ascending.
    [[nodiscard]] std::vector<std::size_t> canReach(int value) const;

private:
    /// The bound under some prices, and where it comes from.
    struct Relaxed {
        std::optional<std::int64_t> bound;
        std::vector<Priced> priced; ///< By entry.
        BestSums sums;
    };
    [[nodiscard]] Relaxed relax(const Prices &prices) const;
    [[nodiscard]] std::int64_t outright(const Prices &prices) const;
    [[nodiscard]] std::int64_t limitsLeft(const PartialMenu &menu) const;
    [[nodiscard]] std::int64_t surplusLeft(const PartialMenu &menu) const;
    [[nodiscard]] Priced pricedAt(std::size_t entry, const Prices &prices) const;
    [[nodiscard]] Prices slackOf(const Prices &prices, std::span<const std::size_t> chosen) const;
    [[nodiscard]] Room room() const;

    const MenuProblem &m_problem;
    const ChoiceRules &m_rules;
    std::vector<int> m_familyOf;          ///< Of each entry, counted from 0; noFamily.
    std::vector<std::int64_t> m_steepest; ///< Of each curve: its first slope.
    int m_minutes = 0;                    ///< That the chosen share; 0 where they cannot bind.
    Prices m_prices;                      ///< The best so far.
    std::optional<std::int64_t> m_bound;
    std::int64_t m_minutePrice = 0;     ///< Of a minute of the day.
    std::vector<std::int64_t> m_limits; ///< What each entry pays for pieces, family and minutes.
    std::vector<std::int64_t> m_priced; ///< What each entry is worth at the prices.
};

} // namespace lidlark::rotation
