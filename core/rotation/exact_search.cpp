#include "core/rotation/exact_search.h"

#include "core/rotation/gain_bound.h"

#include <algorithm>
#include <limits>

namespace lidlark::rotation {

namespace {

constexpr int none = std::numeric_limits<int>::min();

/// First the optimal value, then the first choice in dictionary order that has it. Looking for both
/// at once would have to walk through every tie, and in a new home nearly everything ties.
class ExactSearch
{
public:
    ExactSearch(const MenuProblem &problem, const ChoiceRules &rules, std::int64_t &nodes)
        : m_menu(problem, rules), m_open(rules.offers), m_nodes(nodes)
    {
        for (std::size_t i = 0; i < problem.entries.size(); ++i)
            m_all.push_back({i, 0});
    }

    std::optional<Choice> run()
    {
        improve(m_all);
        if (m_best == none)
            return std::nullopt;
        return Choice{firstWith(m_best), m_best};
    }

private:
    std::span<Scored> openIn(std::span<const Scored> from);
    void improve(std::span<const Scored> from);
    void branch(std::span<const Scored> open, std::size_t end);
    std::size_t neededFirst(std::span<Scored> open) const;
    bool reaches(int goal, std::span<const Scored> from);
    std::vector<std::size_t> firstWith(int goal);

    PartialMenu m_menu;
    std::vector<Scored> m_all;
    std::vector<std::vector<Scored>> m_open; ///< For each depth the entries that can be taken.
    std::int64_t &m_nodes;
    int m_best = none;
    int m_enough = std::numeric_limits<int>::max(); ///< Stop at this value.
};

/// The entries of @p from that can be taken now, the largest gain first. Stays until the next call
/// with as many entries chosen.
std::span<Scored> ExactSearch::openIn(std::span<const Scored> from)
{
    ++m_nodes;
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
    const std::optional<int> bound = gainBound(m_menu, open);
    if (!bound || m_menu.value() + *bound <= m_best)
        return;
    if (m_menu.slotsLeft() == 1)
        m_best = m_menu.value() + open.front().gain;
    else
        branch(open, neededFirst(open));
}

/// Every completion has one of the first @p end entries; the first of them that it has is taken in
/// turn, and those before it are left out.
void ExactSearch::branch(std::span<const Scored> open, std::size_t end)
{
    for (std::size_t i = 0; i < end && m_best < m_enough; ++i) {
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
    while (m_menu.slotsLeft() > 0) {
        const int others = largestGains(openIn(from), {}, m_menu.slotsLeft() - 1).value_or(0);
        for (bool found = false; !found; from = from.subspan(1)) {
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
                                 std::int64_t &nodes)
{
    return ExactSearch(problem, rules, nodes).run();
}

} // namespace lidlark::rotation
