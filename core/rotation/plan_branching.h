#pragma once

#include "core/rotation/found_plans.h"
#include "core/rotation/plan_prices.h"

#include <cstdint>
#include <functional>
#include <vector>

namespace lidlark::rotation {

/// Branch and bound over which entries are in a plan; days come last.
///
/// At each node prices are looked for that prove that no plan which agrees with what is decided is
/// worth more than the best one known (plan_prices.h). At the same prices many entries are decided
/// without branching: with p the price of an open one and q that of the first one left, a plan
/// without a taken one is worth at most bound - p + q; likewise a plan with a left one. What is
/// open still branches on the entry that the looks agree least about. Where all is decided, days
/// are found for the entries or there are none (plan_placing.h); so the search is complete though
/// its bounds throw the days together, and equal days never multiply it. Exponential in the worst
/// case; weeks of 60 entries take tens of nodes, of 300 up to some ten thousand.
///
/// In order, of use for a single day: what is branched on is the open entry that comes first, with
/// it before without it. Any plan with it then comes before any without it in dictionary order
/// (what is in and comes earlier is common to both), so the first plan met is the first there is.
class PlanBranching
{
public:
    /// @param open what may be in the plan besides what is pinned. All must outlive this.
    PlanBranching(const MenuProblem &problem, const HorizonLimits &limits, FoundPlans &found,
                  std::int64_t &nodes, const std::function<bool()> &isOver);

    /// Goes on to the end, or until it is over.
    void search(Decided decided);
    /// Finds the first plan in dictionary order that is worth more than the value known.
    /// @pre no plan is known.
    void searchInOrder(Decided decided);

    /// No plan is worth more, whether the search came to its end or not.
    [[nodiscard]] std::int64_t bound() const;

private:
    struct Node {
        Decided decided;
        PlanPrices::Prices prices; ///< Those with the least bound.
        std::int64_t bound = 0;    ///< In priceUnit.
    };
    /// How long prices are looked for.
    struct Effort {
        int steps = 0;
        int patience = 0;      ///< Steps without a better bound before they are made smaller.
        std::int64_t part = 0; ///< Of a step that would reach the aim at once: sixteenths.
        int plansEvery = 0;    ///< So many looks a plan is made from their order; 0: none.
    };

    void explore(Node node, const Effort &effort);
    bool tighten(Node &node, const Effort &effort);
    bool use(Node &node, const PlanLook &look);
    bool decide(Node &node, const PlanLook &look);
    bool dropWhatCannotFit(Node &node) const;
    void makePlan(const Node &node, const PlanLook &look);
    [[nodiscard]] std::size_t mostDoubtful(const Node &node) const;
    [[nodiscard]] bool cannotBeat(std::int64_t bound) const;
    bool overNow();

    const HorizonLimits &m_limits;
    FoundPlans &m_found;
    std::int64_t &m_nodes;
    const std::function<bool()> &m_isOver;
    bool m_over = false;
    bool m_inOrder = false;
    PlanPrices m_prices;
    PlanLook m_look;
    int m_looks = 0;           ///< At this node.
    std::vector<int> m_taken;  ///< By entry: in how many of them it was taken.
    std::int64_t m_unexplored; ///< The largest bound of what was left when it was over.
};

} // namespace lidlark::rotation
