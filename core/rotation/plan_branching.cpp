#include "core/rotation/plan_branching.h"

#include "core/rotation/curve_surplus.h"

#include <algorithm>
#include <cstdlib>
#include <limits>

namespace lidlark::rotation {

namespace {

constexpr std::int64_t whole = 16; // parts of a step

bool isDearer(const PricedEntry &one, const PricedEntry &other)
{
    return one.price != other.price ? one.price > other.price : one.entry < other.entry;
}

} // namespace

PlanBranching::PlanBranching(const MenuProblem &problem, const HorizonLimits &limits,
                             FoundPlans &found, std::int64_t &nodes,
                             const std::function<bool()> &isOver)
    : m_limits(limits), m_found(found), m_nodes(nodes), m_isOver(isOver), m_prices(problem, limits),
      m_taken(problem.entries.size(), 0), m_unexplored(std::numeric_limits<std::int64_t>::min())
{
}

bool PlanBranching::overNow()
{
    m_over = m_over || (m_isOver && m_isOver());
    return m_over;
}

bool PlanBranching::cannotBeat(std::int64_t bound) const
{
    return wholeOf(bound) <= m_found.value() || (m_inOrder && m_found.best());
}

std::int64_t PlanBranching::bound() const
{
    return std::max({m_found.value(), m_unexplored, m_found.doubtfulValue()});
}

void PlanBranching::search(Decided decided)
{
    // Measured, not derived (tests/bench/bench_menu.cpp).
    constexpr Effort atRoot{.steps = 300, .patience = 10, .part = whole, .plansEvery = 8};
    explore({std::move(decided), m_prices.first(), std::numeric_limits<std::int64_t>::max()},
            atRoot);
    m_found.settleDoubtful();
}

void PlanBranching::searchInOrder(Decided decided)
{
    m_inOrder = true;
    search(std::move(decided));
}

void PlanBranching::explore(Node node, const Effort &effort)
{
    constexpr Effort below{.steps = 20, .patience = 6, .part = whole / 2, .plansEvery = 0};
    // Without an entry that comes early the bound is mostly as it was.
    constexpr Effort passedOver{.steps = 2, .patience = 6, .part = whole / 4, .plansEvery = 0};
    ++m_nodes;
    if (!tighten(node, effort))
        return;
    if (m_over) {
        m_unexplored = std::max(m_unexplored, wholeOf(node.bound));
        return;
    }
    const std::size_t entry =
        m_inOrder ? *std::ranges::min_element(node.decided.open) : mostDoubtful(node);
    const bool inFirst = m_inOrder || 2 * m_taken[entry] >= m_looks;
    std::erase(node.decided.open, entry);
    for (const bool in : {inFirst, !inFirst}) {
        if (cannotBeat(node.bound))
            return;
        Node child = node;
        if (in)
            child.decided.in.push_back(entry);
        explore(std::move(child), in || !m_inOrder ? below : passedOver);
    }
}

/// Leaves out the open entries that go beyond a limit beside those that are in.
/// @returns false when no plan agrees with what is decided.
bool PlanBranching::dropWhatCannotFit(Node &node) const
{
    const std::vector<std::int64_t> left = m_limits.leftBy(node.decided.in);
    std::erase_if(node.decided.open, [&](std::size_t entry) {
        return std::ranges::any_of(m_limits.usesOf(entry), [&](const Use &use) {
            return use.amount > 0 && use.amount > left[use.limit];
        });
    });
    return node.decided.in.size() <= m_limits.places() &&
           node.decided.in.size() + node.decided.open.size() >= m_limits.places();
}

/// Brings the bound down and decides what it decides.
/// @returns whether the node may hold a better plan still.
bool PlanBranching::tighten(Node &node, const Effort &effort)
{
    if (!dropWhatCannotFit(node) || m_found.cannotStand(node.decided.in))
        return false;
    for (const std::size_t entry : node.decided.open)
        m_taken[entry] = 0;
    std::int64_t part = effort.part;
    int waited = 0;
    PlanPrices::Prices prices = node.prices;
    PlanPrices::Prices direction(prices.size(), 0);
    for (m_looks = 1; m_looks <= effort.steps && part > 0; ++m_looks) {
        m_prices.look(prices, node.decided, m_look);
        waited = m_look.bound < node.bound ? 0 : waited + 1;
        if (waited == 0) {
            node.bound = m_look.bound;
            node.prices = prices;
        }
        if (!m_inOrder && effort.plansEvery > 0 && m_looks % effort.plansEvery == 0)
            makePlan(node, m_look);
        if (!use(node, m_look))
            return false;
        if (overNow())
            return true;
        if (waited == effort.patience) {
            part /= 2;
            waited = 0;
            prices = node.prices;
            std::ranges::fill(direction, 0);
            continue;
        }
        const std::int64_t aim = std::min(m_found.value() * priceUnit, node.bound - priceUnit);
        if (!m_prices.step(prices, direction, m_look, (m_look.bound - aim) / whole * part))
            break;
    }
    return true;
}

/// Proposes what is taken, and decides.
/// @returns whether the node may hold a better plan still.
bool PlanBranching::use(Node &node, const PlanLook &look)
{
    for (std::size_t i = 0; i < look.taken; ++i)
        ++m_taken[look.order[i].entry];
    if (cannotBeat(look.bound))
        return false;
    if (!m_inOrder && std::ranges::all_of(std::span(look.slack).subspan(m_limits.curves()),
                                          [](std::int64_t slack) { return slack >= 0; })) {
        std::vector<std::size_t> entries = node.decided.in;
        for (std::size_t i = 0; i < look.taken; ++i)
            entries.push_back(look.order[i].entry);
        m_found.propose(entries);
    }
    return decide(node, look) && !cannotBeat(node.bound);
}

/// At these prices, what every plan worth more than the best one has and what none has.
/// @returns false when all is decided, and settled.
bool PlanBranching::decide(Node &node, const PlanLook &look)
{
    const std::size_t before = node.decided.open.size();
    node.decided.open.clear();
    for (std::size_t i = 0; i < look.order.size(); ++i) {
        const PricedEntry &one = look.order[i];
        const bool taken = i < look.taken;
        if (taken && cannotBeat(look.bound - one.price + look.mostLeft))
            node.decided.in.push_back(one.entry);
        else if (taken || !cannotBeat(look.bound - look.leastTaken + one.price))
            node.decided.open.push_back(one.entry);
    }
    if (node.decided.open.size() != before && !dropWhatCannotFit(node))
        return false;
    const std::size_t places = m_limits.places() - node.decided.in.size();
    if (places > 0 && places < node.decided.open.size())
        return true;
    std::vector<std::size_t> all = node.decided.in;
    if (places > 0)
        all.insert(all.end(), node.decided.open.begin(), node.decided.open.end());
    m_found.settle(all);
    return false;
}

/// The entry that was taken in nearest to half of the looks.
std::size_t PlanBranching::mostDoubtful(const Node &node) const
{
    std::size_t best = node.decided.open.front();
    int least = std::numeric_limits<int>::max();
    for (const std::size_t entry : node.decided.open) {
        const int away = std::abs(2 * m_taken[entry] - m_looks);
        if (away < least) {
            least = away;
            best = entry;
        }
    }
    return best;
}

/// A plan of what is in and of the open ones by their prices.
void PlanBranching::makePlan(const Node &node, const PlanLook &look)
{
    std::vector<PricedEntry> order = look.order;
    std::ranges::sort(order, isDearer);
    std::vector<std::size_t> entries = node.decided.in;
    for (const PricedEntry &one : order)
        entries.push_back(one.entry);
    m_found.fillFrom(entries);
}

} // namespace lidlark::rotation
