#include "core/rotation/best_sums.h"

#include <algorithm>
#include <functional>
#include <limits>
#include <tuple>

namespace lidlark::rotation {

namespace {

constexpr std::int64_t nothing = std::numeric_limits<std::int64_t>::min() / 4;

/// The largest few prices so far.
class Dearest
{
public:
    explicit Dearest(std::size_t count) : m_count(count) {}

    /// Whether fewer than so many cost as much.
    [[nodiscard]] bool takes(std::int64_t price) const
    {
        return m_prices.size() < m_count || (m_count > 0 && price > m_prices.back());
    }
    void add(std::int64_t price)
    {
        m_prices.insert(std::ranges::upper_bound(m_prices, price, std::greater()), price);
        if (m_prices.size() > m_count)
            m_prices.pop_back();
    }

private:
    std::size_t m_count;
    std::vector<std::int64_t> m_prices; ///< The largest first.
};

} // namespace

BestSums::BestSums(std::span<const Priced> priced, const Room &room) : m_room(room)
{
    const auto slots = static_cast<int>(room.count);
    m_room.messy = std::min(room.messy, slots);
    keepTheDearest(priced);
    const std::size_t states = stateOf(m_room) + 1;
    m_sums.assign(states, nothing);
    std::fill_n(m_sums.begin(), states / (room.count + 1), 0); // nothing taken sums to nothing
    for (const Priced &thing : m_things)
        add(thing);
}

std::size_t BestSums::stateOf(const Room &room) const
{
    const auto minutes = static_cast<std::size_t>(m_room.minutes) + 1;
    const auto messy = static_cast<std::size_t>(m_room.messy) + 1;
    return (room.count * messy + static_cast<std::size_t>(room.messy)) * minutes +
           static_cast<std::size_t>(room.minutes);
}

/// A thing is left out when enough others take no more minutes, are no messier and cost as much:
/// a choice with it leaves one of those unused, and could have that one instead.
void BestSums::keepTheDearest(std::span<const Priced> priced)
{
    std::vector<std::vector<std::size_t>> byMinutes(static_cast<std::size_t>(m_room.minutes) + 1);
    for (std::size_t i = 0; i < priced.size(); ++i) {
        if (priced[i].minutes <= m_room.minutes)
            byMinutes[static_cast<std::size_t>(priced[i].minutes)].push_back(i);
    }
    Dearest clean(m_room.count);
    Dearest messy(static_cast<std::size_t>(m_room.messy));
    for (std::vector<std::size_t> &things : byMinutes) {
        std::ranges::sort(things, [&](std::size_t one, std::size_t other) {
            return std::tuple(-priced[one].price, priced[one].isMessy, one) <
                   std::tuple(-priced[other].price, priced[other].isMessy, other);
        });
        for (const std::size_t place : things) {
            const Priced &thing = priced[place];
            if (!clean.takes(thing.price))
                break; // the others of these minutes cost no more
            if (thing.isMessy && !messy.takes(thing.price))
                continue;
            (thing.isMessy ? messy : clean).add(thing.price);
            m_things.push_back(thing);
        }
    }
}

/// From many taken to few, so that nothing is taken twice.
void BestSums::add(const Priced &thing)
{
    const int mess = thing.isMessy ? 1 : 0;
    for (std::size_t slots = m_room.count; slots > 0; --slots) {
        for (int messy = m_room.messy; messy >= mess; --messy) {
            const std::size_t to = stateOf({slots, 0, messy});
            const std::size_t from = stateOf({slots - 1, 0, messy - mess});
            for (int minutes = thing.minutes; minutes <= m_room.minutes; ++minutes) {
                const auto at = static_cast<std::size_t>(minutes);
                const std::int64_t sum =
                    m_sums[from + at - static_cast<std::size_t>(thing.minutes)] + thing.price;
                m_sums[to + at] = std::max(m_sums[to + at], sum);
            }
        }
    }
}

std::optional<std::int64_t> BestSums::best(const Room &room) const
{
    if (room.minutes < 0 || room.messy < 0)
        return std::nullopt;
    const Room within{room.count, std::min(room.minutes, m_room.minutes),
                      std::min(room.messy, m_room.messy)};
    const std::int64_t sum = m_sums[stateOf(within)];
    return sum > nothing / 2 ? std::optional(sum) : std::nullopt;
}

} // namespace lidlark::rotation
