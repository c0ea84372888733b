#include "core/rotation/horizon_limits.h"

#include <algorithm>
#include <map>
#include <set>

namespace lidlark::rotation {

HorizonLimits::HorizonLimits(const MenuProblem &problem, const PlanRules &rules,
                             const std::vector<bool> &allowed)
    : m_curves(problem.curves.size())
{
    for (const ChoiceRules &day : rules.days)
        m_places += day.offers;
    addCurves(problem, allowed);
    addTraits(problem, rules, allowed);
    addFamilies(problem, rules, allowed);
    addItems(problem, rules, allowed);
    sortByEntry(problem.entries.size());
}

std::vector<std::int64_t> HorizonLimits::leftBy(std::span<const std::size_t> entries) const
{
    std::vector<std::int64_t> left = m_limit;
    for (const std::size_t entry : entries) {
        for (const Use &use : usesOf(entry))
            left[use.limit] -= use.amount;
    }
    return left;
}

/// A limit that cannot bind is left out: not even the largest amounts of a plan reach it.
void HorizonLimits::add(const Amounts &amounts, std::int64_t limit, bool always)
{
    std::vector<std::int64_t> sizes;
    for (const Use &use : amounts)
        sizes.push_back(use.amount);
    std::ranges::sort(sizes, std::greater());
    std::int64_t most = 0;
    for (std::size_t i = 0; i < std::min(sizes.size(), m_places); ++i)
        most += sizes[i];
    if (most <= limit && !always)
        return;
    std::int64_t largest = 0;
    for (const std::int64_t size : sizes)
        largest = std::max(largest, size < 0 ? -size : size);
    m_limit.push_back(limit);
    m_largest.push_back(largest);
    m_columns.push_back(amounts);
}

void HorizonLimits::addCurves(const MenuProblem &problem, const std::vector<bool> &allowed)
{
    std::vector<Amounts> curves(m_curves);
    for (std::size_t i = 0; i < problem.entries.size(); ++i) {
        if (!allowed[i])
            continue;
        for (const Amount &amount : problem.entries[i].amounts)
            curves[amount.curve].push_back({i, -amount.minutes});
    }
    for (const Amounts &curve : curves)
        add(curve, 0, true);
}

void HorizonLimits::addTraits(const MenuProblem &problem, const PlanRules &rules,
                              const std::vector<bool> &allowed)
{
    const auto amounts = [&](const auto &amountOf) {
        Amounts all;
        for (std::size_t i = 0; i < problem.entries.size(); ++i) {
            const std::int64_t amount = allowed[i] ? amountOf(problem.entries[i]) : 0;
            if (amount != 0)
                all.push_back({i, amount});
        }
        return all;
    };
    std::int64_t minutes = 0;
    for (const ChoiceRules &day : rules.days)
        minutes += day.minutes;
    add(amounts([](const Entry &entry) { return entry.minutes; }), minutes);
    for (std::size_t trait = 0; trait < 3; ++trait) {
        std::int64_t most = 0;
        for (const ChoiceRules &day : rules.days)
            most += limitsOf(day)[trait].left;
        const auto which = limitsOf({})[trait].trait;
        add(amounts([which](const Entry &entry) { return entry.*which ? 1 : 0; }), most);
    }
    for (std::size_t trait = 0; trait < 2; ++trait) {
        std::int64_t least = 0;
        for (const ChoiceRules &day : rules.days)
            least += day.offers > 0 && missingTraitsOf(day)[trait].found == 0 ? 1 : 0;
        const auto which = missingTraitsOf({})[trait].trait;
        if (least > 0)
            add(amounts([which](const Entry &entry) { return entry.*which ? -1 : 0; }), -least,
                true);
    }
}

void HorizonLimits::addFamilies(const MenuProblem &problem, const PlanRules &rules,
                                const std::vector<bool> &allowed)
{
    std::int64_t most = 0;
    for (const ChoiceRules &day : rules.days)
        most += day.inForce.holds(SideCondition::Family)
                    ? std::min<std::int64_t>(1, static_cast<std::int64_t>(day.offers))
                    : static_cast<std::int64_t>(day.offers);
    std::map<int, Amounts> families;
    for (std::size_t i = 0; i < problem.entries.size(); ++i) {
        if (allowed[i] && problem.entries[i].family != noFamily)
            families[problem.entries[i].family].push_back({i, 1});
    }
    for (const auto &[family, amounts] : families)
        add(amounts, most);
}

void HorizonLimits::addItems(const MenuProblem &problem, const PlanRules &rules,
                             const std::vector<bool> &allowed)
{
    constexpr std::size_t mostThresholds = 4; // of an item: the format allows a thousand items
    std::vector<Amounts> items(problem.stock.size());
    for (std::size_t i = 0; i < problem.entries.size(); ++i) {
        if (!allowed[i])
            continue;
        for (const Need &need : problem.entries[i].needs) {
            if (need.pieces > 0)
                items[need.item].push_back({i, need.pieces});
        }
    }
    const auto days = static_cast<std::int64_t>(rules.days.size());
    for (std::size_t item = 0; item < items.size(); ++item) {
        const std::int64_t stock = problem.stock[item];
        const auto addWith = [&](const auto &f) {
            Amounts amounts;
            for (const Use &use : items[item]) {
                if (f(use.amount) != 0)
                    amounts.push_back({use.limit, f(use.amount)});
            }
            add(amounts, days * f(stock));
            return amounts;
        };
        std::set<std::int64_t> thresholds;
        for (const Use &use : items[item])
            thresholds.insert(std::min(use.amount, stock - use.amount + 1));
        addWith([](std::int64_t pieces) { return pieces; });
        addWith([&](std::int64_t pieces) { return std::int64_t{2 * pieces > stock ? 1 : 0}; });
        std::size_t tried = 0;
        for (const std::int64_t t : thresholds) {
            if (t > 1 && 2 * t <= stock && tried++ < mostThresholds)
                addWith([&](std::int64_t pieces) {
                    return pieces > stock - t ? stock : pieces >= t ? pieces : 0;
                });
        }
    }
}

void HorizonLimits::sortByEntry(std::size_t entries)
{
    m_begin.assign(entries + 1, 0);
    for (const Amounts &column : m_columns) {
        for (const Use &use : column)
            ++m_begin[use.limit + 1];
    }
    for (std::size_t i = 0; i < entries; ++i)
        m_begin[i + 1] += m_begin[i];
    m_uses.resize(m_begin.back());
    std::vector<std::size_t> next(m_begin.begin(), m_begin.end() - 1);
    for (std::size_t which = 0; which < m_columns.size(); ++which) {
        for (const Use &use : m_columns[which])
            m_uses[next[use.limit]++] = {which, use.amount};
    }
    m_columns.clear();
}

} // namespace lidlark::rotation
