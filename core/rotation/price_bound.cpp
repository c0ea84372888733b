#include "core/rotation/price_bound.h"

#include "core/rotation/curve_surplus.h"
#include "core/rotation/largest_few.h"

#include <algorithm>
#include <limits>
#include <map>

namespace lidlark::rotation {

namespace {

/// What the step can change: at the floor nothing goes further down.
std::int64_t movable(std::int64_t price, std::int64_t slack)
{
    return price == 0 && slack > 0 ? 0 : slack;
}

void step(std::vector<std::int64_t> &prices, const std::vector<std::int64_t> &slack,
          std::int64_t length, std::int64_t norm)
{
    for (std::size_t i = 0; i < prices.size(); ++i)
        prices[i] = std::max<std::int64_t>(0, prices[i] - length * slack[i] / norm);
}

std::int64_t squaresOf(const std::vector<std::int64_t> &prices,
                       const std::vector<std::int64_t> &slack)
{
    std::int64_t sum = 0;
    for (std::size_t i = 0; i < prices.size(); ++i) {
        const std::int64_t move = movable(prices[i], slack[i]);
        sum += move * move;
    }
    return sum;
}

} // namespace

PriceBound::PriceBound(const MenuProblem &problem, const ChoiceRules &rules)
    : m_problem(problem), m_rules(rules)
{
    std::map<int, int> families;
    int longest = 0;
    for (const Entry &entry : problem.entries) {
        const bool apart = rules.inForce.holds(SideCondition::Family) && entry.family != noFamily;
        const int next = static_cast<int>(families.size());
        m_familyOf.push_back(apart ? families.try_emplace(entry.family, next).first->second
                                   : noFamily);
        longest = std::max(longest, entry.minutes);
    }
    const bool binds =
        static_cast<std::int64_t>(longest) * static_cast<std::int64_t>(rules.offers) >
        rules.minutes;
    m_minutes = binds && rules.minutes <= mostMinutesSummed ? rules.minutes : 0;
    for (const Curve &curve : problem.curves) {
        m_steepest.push_back(curve.empty() ? 0 : curve.front().slope * priceUnit);
        m_prices.curve.push_back(m_steepest.back() / 2);
    }
    m_prices.item.assign(problem.stock.size(), 0);
    m_prices.family.assign(families.size(), 0);
    m_bound = relax(m_prices).bound;
}

Room PriceBound::room() const
{
    const bool oneMess = m_rules.inForce.holds(SideCondition::OneMess);
    return {m_rules.offers, m_minutes,
            oneMess ? m_rules.messyMost : static_cast<int>(m_rules.offers)};
}

Priced PriceBound::pricedAt(std::size_t entry, const Prices &prices) const
{
    const Entry &one = m_problem.entries[entry];
    std::int64_t price = one.worth * priceUnit;
    for (const Amount &amount : one.amounts)
        price += prices.curve[amount.curve] * amount.minutes;
    for (const Need &need : one.needs)
        price -= prices.item[need.item] * need.pieces;
    if (m_familyOf[entry] != noFamily)
        price -= prices.family[static_cast<std::size_t>(m_familyOf[entry])];
    return {price, m_minutes > 0 ? one.minutes : 0, one.isMessy};
}

/// What the prices pay whatever is chosen.
std::int64_t PriceBound::outright(const Prices &prices) const
{
    std::int64_t sum = 0;
    for (std::size_t i = 0; i < prices.curve.size(); ++i)
        sum += surplusAfter(m_problem.curves[i], 0, prices.curve[i]);
    for (std::size_t i = 0; i < prices.item.size(); ++i)
        sum += prices.item[i] * m_problem.stock[i];
    for (const std::int64_t price : prices.family)
        sum += price;
    return sum;
}

PriceBound::Relaxed PriceBound::relax(const Prices &prices) const
{
    std::vector<Priced> priced;
    priced.reserve(m_problem.entries.size());
    for (std::size_t i = 0; i < m_problem.entries.size(); ++i)
        priced.push_back(pricedAt(i, prices));
    BestSums sums(priced, room());
    const auto best = sums.best(room());
    const auto bound = best ? std::optional(*best + outright(prices)) : std::nullopt;
    return {bound, std::move(priced), std::move(sums)};
}

/// How much of each limit the chosen leave over; below zero where they break it.
Prices PriceBound::slackOf(const Prices &prices, std::span<const std::size_t> chosen) const
{
    Prices slack;
    for (std::size_t i = 0; i < prices.curve.size(); ++i)
        slack.curve.push_back(-filledOf(m_problem.curves[i], prices.curve[i]));
    slack.item.assign(m_problem.stock.begin(), m_problem.stock.end());
    slack.family.assign(prices.family.size(), 1);
    for (const std::size_t entry : chosen) {
        for (const Amount &amount : m_problem.entries[entry].amounts)
            slack.curve[amount.curve] += amount.minutes;
        for (const Need &need : m_problem.entries[entry].needs)
            slack.item[need.item] -= need.pieces;
        if (m_familyOf[entry] != noFamily)
            --slack.family[static_cast<std::size_t>(m_familyOf[entry])];
    }
    return slack;
}

void PriceBound::lower(std::optional<int> value, int steps)
{
    constexpr std::int64_t whole = 16; // of the step that would reach the value at once
    constexpr int patience = 8;
    std::int64_t part = whole;
    int waited = 0;
    Prices prices = m_prices;
    for (int i = 0; i < steps && m_bound && part > 0; ++i) {
        const Relaxed relaxed = relax(prices);
        if (!relaxed.bound) {
            m_bound = std::nullopt;
            return;
        }
        const bool better = *relaxed.bound < *m_bound;
        if (better) {
            m_bound = relaxed.bound;
            m_prices = prices;
        }
        waited = better ? 0 : waited + 1;
        if (waited == patience) {
            part /= 2;
            waited = 0;
            prices = m_prices;
        }
        const std::int64_t goal = value
                                      ? *value * priceUnit
                                      : *m_bound - std::max<std::int64_t>(priceUnit, *m_bound / 20);
        const Prices slack = slackOf(prices, relaxed.sums.choice());
        const std::int64_t norm = squaresOf(prices.curve, slack.curve) +
                                  squaresOf(prices.item, slack.item) +
                                  squaresOf(prices.family, slack.family);
        if (norm == 0 || (value && wholeOf(*m_bound) <= *value))
            return;
        const std::int64_t length = (*relaxed.bound - goal) * part / whole;
        step(prices.curve, slack.curve, length, norm);
        step(prices.item, slack.item, length, norm);
        step(prices.family, slack.family, length, norm);
        for (std::size_t curve = 0; curve < prices.curve.size(); ++curve)
            prices.curve[curve] = std::min(prices.curve[curve], m_steepest[curve]);
    }
}

std::optional<int> PriceBound::bound() const
{
    if (!m_bound)
        return std::nullopt;
    constexpr std::int64_t most = std::numeric_limits<int>::max();
    return static_cast<int>(std::min(wholeOf(*m_bound), most));
}

void PriceBound::settle()
{
    const Relaxed relaxed = relax(m_prices);
    constexpr int fewer = 3;
    Room less = room();
    less.minutes -= fewer;
    const auto all = relaxed.sums.best(room());
    const auto some = relaxed.sums.best(less);
    m_minutePrice = m_minutes > fewer && all && some ? (*all - *some) / fewer : 0;
    m_limits.clear();
    m_priced.clear();
    for (std::size_t i = 0; i < m_problem.entries.size(); ++i) {
        const Entry &entry = m_problem.entries[i];
        std::int64_t limits = m_minutePrice * entry.minutes;
        for (const Need &need : entry.needs)
            limits += m_prices.item[need.item] * need.pieces;
        if (m_familyOf[i] != noFamily)
            limits += m_prices.family[static_cast<std::size_t>(m_familyOf[i])];
        m_limits.push_back(limits);
        m_priced.push_back(relaxed.priced[i].price - m_minutePrice * entry.minutes);
    }
}

/// What the prices pay for what the chosen leave of pieces, families and minutes.
std::int64_t PriceBound::limitsLeft(const PartialMenu &menu) const
{
    std::int64_t limits = m_minutes > 0 ? m_minutePrice * menu.minutesLeft() : 0;
    for (std::size_t item = 0; item < m_prices.item.size(); ++item)
        limits += m_prices.item[item] * menu.stockLeft()[item];
    for (const std::int64_t price : m_prices.family)
        limits += price;
    for (const std::size_t entry : menu.chosen()) {
        if (m_familyOf[entry] != noFamily)
            limits -= m_prices.family[static_cast<std::size_t>(m_familyOf[entry])];
    }
    return limits;
}

/// What the prices pay for what the chosen leave of the curves.
std::int64_t PriceBound::surplusLeft(const PartialMenu &menu) const
{
    std::int64_t surplus = 0;
    for (std::size_t curve = 0; curve < m_prices.curve.size(); ++curve)
        surplus +=
            surplusAfter(m_problem.curves[curve], menu.minutesOn()[curve], m_prices.curve[curve]);
    return surplus;
}

std::span<Scored> PriceBound::worthwhile(const PartialMenu &menu, std::span<Scored> open,
                                         int beyond) const
{
    LargestFew largest(menu.slotsLeft() - 1);
    for (const Scored &scored : open)
        largest.offer(m_priced[scored.entry]);
    const std::int64_t others = largest.sum() + limitsLeft(menu) + surplusLeft(menu);
    const auto without = std::ranges::remove_if(open, [&](const Scored &scored) {
        std::int64_t most = scored.gain * priceUnit - m_limits[scored.entry] + others;
        for (const Amount &amount : m_problem.entries[scored.entry].amounts) {
            const Curve &curve = m_problem.curves[amount.curve];
            const int minutes = menu.minutesOn()[amount.curve];
            const std::int64_t price = m_prices.curve[amount.curve];
            most -= surplusAfter(curve, minutes, price) -
                    surplusAfter(curve, minutes + amount.minutes, price);
        }
        return wholeOf(most) <= beyond;
    });
    return open.first(open.size() - without.size());
}

std::vector<std::size_t> PriceBound::canReach(int value) const
{
    const Relaxed relaxed = relax(m_prices);
    const std::int64_t paid = outright(m_prices);
    std::vector<std::size_t> entries;
    for (std::size_t i = 0; i < relaxed.priced.size(); ++i) {
        const Priced &one = relaxed.priced[i];
        Room others = room();
        --others.count;
        others.minutes -= one.minutes;
        others.messy -= one.isMessy ? 1 : 0;
        const auto sum = relaxed.sums.best(others);
        if (sum && wholeOf(paid + one.price + *sum) >= value)
            entries.push_back(i);
    }
    return entries;
}

} // namespace lidlark::rotation
