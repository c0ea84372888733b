#include "core/rotation/plan_prices.h"

#include "core/rotation/curve_surplus.h"

#include <algorithm>
#include <limits>

namespace lidlark::rotation {

namespace {

constexpr std::int64_t mostPaid = std::int64_t{1} << 48; // for one limit, whoever uses it
constexpr std::int64_t mostSlack = std::int64_t{1} << 20;
constexpr std::int64_t mostDistance = std::int64_t{1} << 36;

} // namespace

PlanPrices::PlanPrices(const MenuProblem &problem, const HorizonLimits &limits)
    : m_problem(problem), m_limits(limits)
{
    for (std::size_t i = 0; i < limits.count(); ++i) {
        const std::int64_t used = static_cast<std::int64_t>(limits.places()) * limits.largest(i);
        const std::int64_t size = std::max<std::int64_t>(1, used + std::abs(limits.limit(i)));
        const bool isCurve = i < limits.curves();
        const bool isFlat = isCurve && problem.curves[i].empty();
        m_most.push_back(!isCurve ? mostPaid / size
                         : isFlat ? 0
                                  : problem.curves[i].front().slope * priceUnit);
        std::int64_t largest = size;
        for (std::size_t segment = 0; isCurve && segment < problem.curves[i].size(); ++segment)
            largest += problem.curves[i][segment].width;
        int shift = 0;
        while (largest >> shift > mostSlack)
            ++shift;
        m_shift.push_back(shift);
    }
}

PlanPrices::Prices PlanPrices::first() const
{
    Prices prices(m_limits.count(), 0);
    for (std::size_t i = 0; i < m_limits.curves(); ++i)
        prices[i] = m_most[i] / 2;
    return prices;
}

std::int64_t PlanPrices::priceOf(std::size_t entry, const Prices &prices) const
{
    std::int64_t price = m_problem.entries[entry].worth * priceUnit;
    for (const Use &use : m_limits.usesOf(entry))
        price -= prices[use.limit] * use.amount;
    return price;
}

void PlanPrices::look(const Prices &prices, const Decided &decided, PlanLook &look) const
{
    constexpr std::int64_t none = std::numeric_limits<std::int64_t>::min() / 4;
    look.taken = m_limits.places() - decided.in.size();
    look.bound = 0;
    look.slack.resize(m_limits.count());
    for (std::size_t i = 0; i < m_limits.count(); ++i) {
        const bool isCurve = i < m_limits.curves();
        look.slack[i] = isCurve ? -filledOf(m_problem.curves[i], prices[i]) : m_limits.limit(i);
        look.bound +=
            isCurve ? surplusOf(m_problem.curves[i], prices[i]) : prices[i] * m_limits.limit(i);
    }
    look.order.clear();
    for (const std::size_t entry : decided.open)
        look.order.push_back({priceOf(entry, prices), entry});
    const auto dearer = [](const PricedEntry &one, const PricedEntry &other) {
        return one.price != other.price ? one.price > other.price : one.entry < other.entry;
    };
    const auto end = look.order.begin() + static_cast<std::ptrdiff_t>(look.taken);
    if (end != look.order.end())
        std::nth_element(look.order.begin(), end, look.order.end(), dearer);
    look.mostLeft = end == look.order.end() ? none : end->price;
    look.leastTaken = -none;
    const auto use = [&](std::size_t entry) {
        for (const Use &used : m_limits.usesOf(entry))
            look.slack[used.limit] -= used.amount;
    };
    for (auto one = look.order.begin(); one != end; ++one) {
        look.bound += one->price;
        look.leastTaken = std::min(look.leastTaken, one->price);
        use(one->entry);
    }
    for (const std::size_t entry : decided.in) {
        look.bound += priceOf(entry, prices);
        use(entry);
    }
}

bool PlanPrices::step(Prices &prices, Prices &direction, const PlanLook &look,
                      std::int64_t distance) const
{
    constexpr std::int64_t scale = 16;
    constexpr std::int64_t carried = 11; // of `scale`
    std::int64_t norm = 0;
    for (std::size_t i = 0; i < prices.size(); ++i) {
        const std::int64_t slack = look.slack[i] >> m_shift[i];
        // At an end of its range a price has nowhere to go.
        const bool stuck = (prices[i] == 0 && slack > 0) || (prices[i] == m_most[i] && slack < 0);
        direction[i] = stuck ? 0 : slack * scale + direction[i] * carried / scale;
        norm += (direction[i] / scale) * (direction[i] / scale);
    }
    if (norm == 0)
        return false;
    const std::int64_t length = std::min(distance, mostDistance);
    bool moves = false;
    for (std::size_t i = 0; i < prices.size(); ++i) {
        const std::int64_t move = (length * direction[i] / (norm * scale)) >> m_shift[i];
        moves = moves || move != 0;
        prices[i] = std::clamp<std::int64_t>(prices[i] - move, 0, m_most[i]);
    }
    // Where the amounts are so large that every move is rounded away, the least one is made.
    for (std::size_t i = 0; i < prices.size() && !moves; ++i) {
        const int move = direction[i] > 0 ? 1 : direction[i] < 0 ? -1 : 0;
        prices[i] = std::clamp<std::int64_t>(prices[i] - move, 0, m_most[i]);
    }
    return true;
}

} // namespace lidlark::rotation
