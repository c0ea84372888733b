#pragma once

#include "core/rotation/plan_rules.h"

#include <cstdint>
#include <functional>
#include <span>
#include <vector>

namespace lidlark::rotation {

/// How much of one limit an entry uses; below zero: it gives.
struct Use {
    std::size_t limit = 0;
    std::int64_t amount = 0;
};

/// What a plan has to satisfy when its days are thrown together: it has so many entries, and all of
/// them together keep to limits, each the sum of what the days allow. Whatever keeps to the rules
/// day by day keeps to these; the other way round does not hold, so they serve for bounds.
///
/// - Minutes, mess, new, held back and each family: the limits of the days, summed.
/// - A known friend, one without a table: at least one a day, as a limit on entries that give one.
/// - An item of stock c: let f be a function with, for any pieces p1 + p2 + ... <= c,
///   f(p1) + f(p2) + ... <= f(c). Then a plan of D days uses at most D f(c). Such are f(p) = p; for
///   a threshold t <= c / 2, f(p) = c above c - t, p from t to c - t, 0 below t; and the count of
///   those above c / 2, of which no two stand on one day.
///   Source: S. Martello, P. Toth, "Lower bounds and reduction procedures for the bin packing
///   problem", Discrete Applied Mathematics 28 (1990), from memory: the bound L2.
///
/// The curves come first: they are no limits, but have a price a minute as those do. An entry gives
/// to them, so its amounts there are below zero.
class HorizonLimits
{
public:
    /// @param allowed for each entry whether it can stand on any day: others use nothing.
    HorizonLimits(const MenuProblem &problem, const PlanRules &rules,
                  const std::vector<bool> &allowed);

    [[nodiscard]] std::size_t places() const { return m_places; }
    [[nodiscard]] std::size_t curves() const { return m_curves; }
    /// Curves and limits.
    [[nodiscard]] std::size_t count() const { return m_limit.size(); }
    /// 0 for a curve.
    [[nodiscard]] std::int64_t limit(std::size_t which) const { return m_limit[which]; }
    /// The largest amount by size that an entry uses or gives.
    [[nodiscard]] std::int64_t largest(std::size_t which) const { return m_largest[which]; }
    [[nodiscard]] std::span<const Use> usesOf(std::size_t entry) const
    {
        return std::span(m_uses).subspan(m_begin[entry], m_begin[entry + 1] - m_begin[entry]);
    }
    /// What the entries leave of each limit; of a curve: the minutes they put on it.
    [[nodiscard]] std::vector<std::int64_t> leftBy(std::span<const std::size_t> entries) const;

private:
    using Amounts = std::vector<Use>; ///< Here `limit` is an entry.
    void add(const Amounts &amounts, std::int64_t limit, bool always = false);
    void addCurves(const MenuProblem &problem, const std::vector<bool> &allowed);
    void addTraits(const MenuProblem &problem, const PlanRules &rules,
                   const std::vector<bool> &allowed);
    void addFamilies(const MenuProblem &problem, const PlanRules &rules,
                     const std::vector<bool> &allowed);
    void addItems(const MenuProblem &problem, const PlanRules &rules,
                  const std::vector<bool> &allowed);
    void sortByEntry(std::size_t entries);

    std::size_t m_places = 0;
    std::size_t m_curves = 0;
    std::vector<std::int64_t> m_limit;
    std::vector<std::int64_t> m_largest;
    std::vector<Amounts> m_columns; ///< By limit, until they are sorted by entry.
    std::vector<std::size_t> m_begin;
    std::vector<Use> m_uses;
};

} // namespace lidlark::rotation
