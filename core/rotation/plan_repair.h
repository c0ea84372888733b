#pragma once

#include "core/rotation/day_load.h"
#include "core/rotation/plan_rules.h"

#include <cstdint>
#include <functional>
#include <span>
#include <vector>

namespace lidlark::rotation {

/// Brings full days that break rules to keep to them, by exchanges of the entries of two days, or
/// of one for an entry that is on no day. Each step makes the exchange that leaves least broken, on
/// one of the days that are broken; an entry that has moved rests for a few steps, so that the
/// search does not go in circles. It finds days soon where there are many ways, as there mostly
/// are, and proves nothing. Deterministic. A step costs O(k n).
class PlanRepair
{
public:
    /// @param pinned by day: what stays where it is. @param problem,rules must outlive this.
    PlanRepair(const MenuProblem &problem, const PlanRules &rules,
               const std::function<bool()> &isOver);

    /// Finds days for @p entries, which with the pinned ones fill all places.
    /// @param spare entries that may stand in for them.
    /// @param steps so many exchanges at most. @returns whether all rules are kept.
    bool repair(std::span<const std::size_t> entries, std::span<const std::size_t> spare,
                int steps);
    /// Ascending, with the pinned ones.
    [[nodiscard]] std::vector<std::vector<std::size_t>> days() const;

private:
    struct Exchange {
        int change = 0;
        std::size_t out = 0; ///< Stands on the broken day.
        std::size_t in = 0;  ///< Comes there.
        std::size_t day = 0; ///< Where `in` stood; past the days: it was spare.
    };

    void layOut(std::span<const std::size_t> entries);
    [[nodiscard]] std::size_t brokenDay(int step) const;
    bool exchangeOn(std::size_t day, int step);
    void look(std::size_t day, std::size_t out, std::size_t in, std::size_t from, int step,
              Exchange &best);

    const MenuProblem &m_problem;
    const PlanRules &m_rules;
    const std::function<bool()> &m_isOver;
    std::vector<DayLoad> m_days;
    std::vector<bool> m_isPinned; ///< By entry.
    std::vector<int> m_restsTill; ///< By entry.
    std::vector<std::size_t> m_spare;
    int m_broken = 0; ///< Of all days.
    int m_least = 0;  ///< So far.
};

} // namespace lidlark::rotation
