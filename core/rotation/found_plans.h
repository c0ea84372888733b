#pragma once

#include "core/rotation/horizon_limits.h"
#include "core/rotation/plan_draft.h"
#include "core/rotation/plan_placing.h"
#include "core/rotation/plan_repair.h"

#include <cstdint>
#include <functional>
#include <optional>
#include <span>
#include <unordered_set>
#include <vector>

namespace lidlark::rotation {

/// The best plan found so far, and the ways to a better one from entries that a search proposes:
/// days are looked for, and a plan that is found is improved by exchanges.
class FoundPlans
{
public:
    /// @param pinned what stands whatever else. @param open what may be in a plan besides.
    /// The others must outlive this.
    FoundPlans(const MenuProblem &problem, const PlanRules &rules, const HorizonLimits &limits,
               const PlanDraft &pinned, std::span<const std::size_t> open,
               const std::function<bool()> &isOver);

    /// Of the best plan; until one is known, a value that every plan exceeds.
    [[nodiscard]] std::int64_t value() const { return m_value; }
    [[nodiscard]] const std::optional<PlanDraft> &best() const { return m_best; }
    /// From now on only plans worth so much are looked for.
    void expect(std::int64_t value) { m_value = value - 1; }
    /// Keeps the plan if it is full and the best.
    void know(const PlanDraft &draft);
    /// The same for days that a plan may have, improved by exchanges.
    void adopt(const std::vector<std::vector<std::size_t>> &days);

    /// Makes a plan of entries, those that come first if they fit.
    void fillFrom(std::span<const std::size_t> order);
    /// Looks a while for days for a whole plan of entries, once for the same ones.
    void propose(std::span<const std::size_t> entries);
    /// Finds days for a whole plan of entries that is worth more than the best, or proves that
    /// there are none; what takes long is put off as doubtful.
    void settle(std::span<const std::size_t> entries);
    /// Settles those put off, however long it takes.
    void settleDoubtful();
    /// The value of the best of those still doubtful; far below any value when none is.
    [[nodiscard]] std::int64_t doubtfulValue() const;
    /// Whether these entries, of a plan in the making, have been proven to find no days together.
    /// It is worth looking only where other plans have failed for that; else this is false.
    [[nodiscard]] bool cannotStand(std::span<const std::size_t> entries);

private:
    [[nodiscard]] std::int64_t valueOf(std::span<const std::size_t> entries) const;
    [[nodiscard]] bool keepsLimits(std::span<const std::size_t> entries) const;
    [[nodiscard]] std::vector<std::size_t> notPinned(std::span<const std::size_t> entries) const;
    void settle(std::span<const std::size_t> entries, std::int64_t patience);

    const MenuProblem &m_problem;
    const HorizonLimits &m_limits;
    PlanDraft m_pinned;
    std::vector<std::size_t> m_open;
    const std::function<bool()> &m_isOver;
    PlanPlacing m_placing;
    PlanRepair m_repair;
    std::optional<PlanDraft> m_best;
    std::int64_t m_value;
    std::unordered_set<std::uint64_t> m_proposed; ///< Hashes of them.
    std::vector<std::vector<std::size_t>> m_doubtful;
    bool m_placesAreScarce = false;
};

} // namespace lidlark::rotation
