#include "core/rotation/plan_search.h"

#include "core/rotation/plan_branching.h"
#include "core/rotation/plan_start.h"

#include <algorithm>
#include <limits>
#include <optional>

namespace lidlark::rotation {

namespace {

class PlanSearch
{
public:
    PlanSearch(const MenuProblem &problem, const PlanRules &rules, const PlanDraft &pinned,
               std::int64_t &nodes, const std::function<bool()> &isOver);

    PlanAnswer run();
    std::optional<std::vector<std::size_t>> firstOfDay(int value);

private:
    void fillGreedily(FoundPlans &found) const;
    std::optional<NoPlan> findAny(FoundPlans &found);

    const MenuProblem &m_problem;
    const PlanRules &m_rules;
    const PlanDraft &m_pinned;
    std::int64_t &m_nodes;
    const std::function<bool()> &m_isOver;
    std::vector<bool> m_allowed; ///< By entry: it is pinned or can be on some day.
    Decided m_decided;
};

PlanSearch::PlanSearch(const MenuProblem &problem, const PlanRules &rules, const PlanDraft &pinned,
                       std::int64_t &nodes, const std::function<bool()> &isOver)
    : m_problem(problem), m_rules(rules), m_pinned(pinned), m_nodes(nodes), m_isOver(isOver)
{
    for (std::size_t i = 0; i < problem.entries.size(); ++i) {
        const bool isPinned = pinned.dayOf(i) != nowhere;
        m_allowed.push_back(isPinned || pinned.roomiestFor(i) != nowhere);
        if (m_allowed.back())
            (isPinned ? m_decided.in : m_decided.open).push_back(i);
    }
}

void PlanSearch::fillGreedily(FoundPlans &found) const
{
    for (const auto fill : {fillDayByDay, fillFirstDays, fillRoomiestDays}) {
        PlanDraft draft = m_pinned;
        fill(draft, m_decided.open);
        found.know(draft);
        if (draft.isFull()) {
            improveByExchange(draft, m_decided.open, m_isOver);
            found.know(draft);
        }
    }
}

/// Some plan, whatever it is worth: the same problem without worths and curves. Its bounds look for
/// nothing but a proof that there is none.
std::optional<NoPlan> PlanSearch::findAny(FoundPlans &found)
{
    MenuProblem blank = m_problem;
    blank.curves.clear();
    for (Entry &entry : blank.entries) {
        entry.worth = 0;
        entry.amounts.clear();
    }
    const HorizonLimits limits(blank, m_rules, m_allowed);
    const std::optional<PlanDraft> pinned = pinnedDraft(blank, m_rules);
    FoundPlans any(blank, m_rules, limits, *pinned, m_decided.open, m_isOver);
    PlanBranching branching(blank, limits, any, m_nodes, m_isOver);
    branching.search(m_decided);
    if (!any.best())
        return branching.bound() > any.value() ? NoPlan::NotFound : NoPlan::Impossible;
    found.adopt(any.best()->days());
    return std::nullopt;
}

PlanAnswer PlanSearch::run()
{
    const HorizonLimits limits(m_problem, m_rules, m_allowed);
    if (m_decided.in.size() + m_decided.open.size() < limits.places())
        return NoPlan::Impossible;
    FoundPlans found(m_problem, m_rules, limits, m_pinned, m_decided.open, m_isOver);
    fillGreedily(found);
    if (!found.best()) {
        if (const std::optional<NoPlan> none = findAny(found))
            return *none;
    }
    PlanBranching branching(m_problem, limits, found, m_nodes, m_isOver);
    branching.search(m_decided);
    constexpr std::int64_t most = std::numeric_limits<int>::max();
    const auto bound = static_cast<int>(std::min(branching.bound(), most));
    const int value = found.best()->value();
    return Plan{found.best()->days(), value, bound, bound == value};
}

std::optional<std::vector<std::size_t>> PlanSearch::firstOfDay(int value)
{
    const HorizonLimits limits(m_problem, m_rules, m_allowed);
    FoundPlans found(m_problem, m_rules, limits, m_pinned, m_decided.open, m_isOver);
    found.expect(value);
    PlanBranching branching(m_problem, limits, found, m_nodes, m_isOver);
    branching.searchInOrder(m_decided);
    return found.best() ? std::optional(found.best()->days().front()) : std::nullopt;
}

} // namespace

std::optional<std::vector<std::size_t>> firstOfDay(const MenuProblem &problem,
                                                   const ChoiceRules &rules, int value,
                                                   std::int64_t &nodes,
                                                   const std::function<bool()> &isOver)
{
    const PlanRules day{{rules}, {}};
    return PlanSearch(problem, day, PlanDraft(problem, day.days), nodes, isOver).firstOfDay(value);
}

PlanAnswer bestPlan(const MenuProblem &problem, const PlanRules &rules, std::int64_t &nodes,
                    const std::function<bool()> &isOver)
{
    const std::optional<PlanDraft> pinned = pinnedDraft(problem, rules);
    if (!pinned)
        return NoPlan::Impossible;
    return PlanSearch(problem, rules, *pinned, nodes, isOver).run();
}

} // namespace lidlark::rotation
