#include "core/rotation/exact_search.h"

#include "core/rotation/gain_bound.h"
#include "core/rotation/plan_search.h"

#include <algorithm>
#include <limits>

namespace lidlark::rotation {

namespace {

constexpr int none = std::numeric_limits<int>::min() / 2;
constexpr std::int64_t endless = std::numeric_limits<std::int64_t>::max();

/// So many entries are looked at before the menu is searched as a plan: small ones are through long
/// before.
/// Measured, not derived (tests/bench/bench_menu.cpp).
constexpr std::int64_t firstLook = 100'000;

/// First the optimal value, then the first choice in dictionary order that has it. Looking for both
/// at once would have to walk through every tie, and in a new home nearly everything ties.
class ExactSearch
{
public:
    ExactSearch(const MenuProblem &problem, const ChoiceRules &rules, std::int64_t &nodes,
                const std::function<bool()> &isOver)
        : m_problem(problem), m_rules(rules), m_menu(problem, rules), m_open(rules.offers),
          m_nodes(nodes), m_isOver(isOver)
    {
        for (std::size_t i = 0; i < problem.entries.size(); ++i)
            m_all.push_back({i, 0});
    }

    std::optional<Choice> run()
    {
        m_patience = firstLook;
        improve(m_all);
        const bool brokenOff = m_patience < 0 && !m_over;
        if (!m_over)
            m_patience = endless;
        if (brokenOff)
            searchAsPlan();
        if (m_best == none)
            return std::nullopt;
        Choice found{m_found, m_best, !m_over};
        std::ranges::sort(found.entries);
        if (found.proven && !brokenOff) {
            std::vector<std::size_t> first = firstWith(found.value);
            if (!m_over) // else the one in hand is worth as much
                found.entries = std::move(first);
        }
        return found;
    }

private:
    std::span<Scored> openIn(std::span<const Scored> from);
    void searchAsPlan();
    void improve(std::span<const Scored> from);
    void keep(std::size_t last, int value);
    std::span<Scored> worthwhileOf(std::span<Scored> open) const;
    void pairUp(std::span<const Scored> open, std::size_t end);
    void branch(std::span<const Scored> open, std::size_t end);
    std::size_t neededFirst(std::span<Scored> open) const;
    bool reaches(int goal, std::span<const Scored> from);
    std::vector<std::size_t> firstWith(int goal);

    const MenuProblem &m_problem;
    const ChoiceRules &m_rules;
    PartialMenu m_menu;
    std::vector<Scored> m_all;
    std::vector<std::vector<Scored>> m_open; ///< For each depth the entries that can be taken.
    std::int64_t &m_nodes;
    int m_best = none;
    int m_enough = std::numeric_limits<int>::max(); ///< Stop at this value.
    /// Entries that may still be looked at; below zero the search has been broken off.
    std::int64_t m_patience = endless;
    const std::function<bool()> &m_isOver;
    bool m_over = false;
    std::vector<std::size_t> m_found; ///< The choice worth `m_best`.
};

/// Where the first look does not get through, the menu is searched as a plan of one day
/// (plan_search.h), whose bounds know of the stock, the families and the curves all at once; a node
/// costs more there. Then for the first choice with the optimal value.
void ExactSearch::searchAsPlan()
{
    const PlanAnswer answer = bestPlan(m_problem, {{m_rules}, {}}, m_nodes, m_isOver);
    const Plan *plan = std::get_if<Plan>(&answer);
    m_over = plan == nullptr ? std::get<NoPlan>(answer) == NoPlan::NotFound : !plan->proven;
    if (plan == nullptr)
        return;
    if (plan->value > m_best) {
        m_best = plan->value;
        m_found = plan->days.front();
    }
    if (m_over)
        return;
    // Where it is over before, the one in hand is worth as much.
    if (const auto first = firstOfDay(m_problem, m_rules, m_best, m_nodes, m_isOver))
        m_found = *first;
}

/// The entries of @p from that can be taken now, the largest gain first. Stays until the next call
/// with as many entries chosen.
std::span<Scored> ExactSearch::openIn(std::span<const Scored> from)
{
    ++m_nodes;
    m_patience -= static_cast<std::int64_t>(from.size());
    m_over = m_over || (m_isOver && m_isOver());
    if (m_over)
        m_patience = -1;
    std::vector<Scored> &open = m_open[m_menu.chosen().size()];
    open.clear();
    for (const Scored &scored : from) {
        if (m_menu.canTake(scored.entry))
            open.push_back({scored.entry, m_menu.gain(scored.entry)});
    }
    std::ranges::sort(open, [](const Scored &left, const Scored &right) {
        return left.gain != right.gain ? left.gain > right.gain : left.entry < right.entry;
    });
    return open;
}

/// Raises m_best to the value of the best completion of the menu with entries of @p from.
void ExactSearch::improve(std::span<const Scored> from)
{
    const std::span<Scored> open = openIn(from);
    if (m_patience < 0)
        return;
    const std::optional<int> bound = gainBound(m_menu, open, m_best - m_menu.value());
    if (!bound || m_menu.value() + *bound <= m_best)
        return;
    const std::span<Scored> worthwhile = worthwhileOf(open);
    const std::size_t end = neededFirst(worthwhile);
    if (m_menu.slotsLeft() == 1)
        keep(open.front().entry, m_menu.value() + open.front().gain);
    else if (m_menu.slotsLeft() == 2)
        pairUp(worthwhile, end);
    else
        branch(worthwhile, end);
}

/// The chosen and one more are the best so far.
void ExactSearch::keep(std::size_t last, int value)
{
    m_best = value;
    m_found.assign(m_menu.chosen().begin(), m_menu.chosen().end());
    m_found.push_back(last);
}

/// Without those at the end that even beside the largest others would not lead beyond the best.
std::span<Scored> ExactSearch::worthwhileOf(std::span<Scored> open) const
{
    const int others = largestGains(open, {}, m_menu.slotsLeft() - 1).value_or(0);
    const int least = m_best - m_menu.value() - others;
    const auto end = std::ranges::partition_point(
        open, [least](const Scored &scored) { return scored.gain > least; });
    return open.first(static_cast<std::size_t>(end - open.begin()));
}

/// The last two places, as `branch` and `improve` would fill them, without a node for each pair.
void ExactSearch::pairUp(std::span<const Scored> open, std::size_t end)
{
    for (std::size_t i = 0; i < end && m_best < m_enough && m_patience >= 0; ++i) {
        const int one = m_menu.value() + open[i].gain;
        m_menu.take(open[i].entry);
        for (const auto others : {open.subspan(i + 1, end - i - 1), open.subspan(end)}) {
            for (const Scored &other : others) {
                if (one + other.gain <= m_best)
                    break;
                --m_patience;
                if (!m_menu.canTake(other.entry))
                    continue;
                const int value = m_menu.value() + m_menu.gain(other.entry);
                if (value > m_best)
                    keep(other.entry, value);
            }
        }
        m_menu.giveBack();
    }
}

/// Every completion has one of the first @p end entries; the first of them that it has is taken in
/// turn, and those before it are left out.
void ExactSearch::branch(std::span<const Scored> open, std::size_t end)
{
    for (std::size_t i = 0; i < end && m_best < m_enough && m_patience >= 0; ++i) {
        const auto rest = largestGains(open.subspan(i + 1, end - i - 1), open.subspan(end),
                                       m_menu.slotsLeft() - 1);
        if (!rest || m_menu.value() + open[i].gain + *rest <= m_best)
            return;
        m_menu.take(open[i].entry);
        improve(open.subspan(i + 1));
        m_menu.giveBack();
    }
}

/// Puts the entries with a trait that is still missing first, keeping the order otherwise: where
/// two missing traits cannot come together, that shows after a few nodes and not after all.
/// @returns how many they are; all when nothing is missing.
std::size_t ExactSearch::neededFirst(std::span<Scored> open) const
{
    for (const AtLeastOne &need : m_menu.atLeastOne()) {
        if (need.found == 0) {
            const auto others =
                std::stable_partition(open.begin(), open.end(), [&](const Scored &scored) {
                    return m_menu.entry(scored.entry).*need.trait;
                });
            return static_cast<std::size_t>(others - open.begin());
        }
    }
    return open.size();
}

/// Whether some completion of the menu with entries of @p from has at least this value.
bool ExactSearch::reaches(int goal, std::span<const Scored> from)
{
    if (m_menu.slotsLeft() == 0)
        return m_menu.value() >= goal;
    m_best = goal - 1;
    m_enough = goal;
    improve(from);
    return m_best >= goal;
}

/// The first choice in dictionary order with this value, which some choice has.
std::vector<std::size_t> ExactSearch::firstWith(int goal)
{
    std::span<const Scored> from = m_all;
    while (m_menu.slotsLeft() > 0 && !m_over) {
        const int others = largestGains(openIn(from), {}, m_menu.slotsLeft() - 1).value_or(0);
        for (bool found = false; !found && !m_over; from = from.subspan(1)) {
            const std::size_t next = from.front().entry;
            if (!m_menu.canTake(next) || m_menu.value() + m_menu.gain(next) + others < goal)
                continue;
            m_menu.take(next);
            found = reaches(goal, from.subspan(1));
            if (!found)
                m_menu.giveBack();
        }
    }
    return {m_menu.chosen().begin(), m_menu.chosen().end()};
}

} // namespace

std::optional<Choice> bestChoice(const MenuProblem &problem, const ChoiceRules &rules,
                                 std::int64_t &nodes, const std::function<bool()> &isOver)
{
    return ExactSearch(problem, rules, nodes, isOver).run();
}

} // namespace lidlark::rotation
