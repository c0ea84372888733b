#include "core/rotation/best_sums.h"

#include <algorithm>
#include <limits>

namespace lidlark::rotation {

namespace {

constexpr std::int64_t nothing = std::numeric_limits<std::int64_t>::min() / 4;

} // namespace

BestSums::BestSums(std::span<const Priced> priced, const Room &room) : m_room(room)
{
    const auto slots = static_cast<int>(room.slots);
    m_room.messy = std::min(room.messy, slots);
    keepTheDearest(priced);
    const std::size_t states = stateOf(m_room) + 1;
    m_sums.assign(states, nothing);
    std::fill_n(m_sums.begin(), states / (room.slots + 1), 0); // nothing taken sums to nothing
    m_taken.assign(m_kept.size() * states, 0);
    for (std::size_t i = 0; i < m_kept.size(); ++i)
        add(i, m_things[i]);
}

std::size_t BestSums::stateOf(const Room &room) const
{
    const auto minutes = static_cast<std::size_t>(m_room.minutes) + 1;
    const auto messy = static_cast<std::size_t>(m_room.messy) + 1;
    return (room.slots * messy + static_cast<std::size_t>(room.messy)) * minutes +
           static_cast<std::size_t>(room.minutes);
}

void BestSums::keepTheDearest(std::span<const Priced> priced)
{
    const auto groups = 2 * (static_cast<std::size_t>(m_room.minutes) + 1);
    std::vector<std::vector<std::size_t>> dearest(groups);
    const auto dearer = [&](std::size_t one, std::size_t other) {
        return priced[one].price != priced[other].price ? priced[one].price > priced[other].price
                                                        : one < other;
    };
    for (std::size_t i = 0; i < priced.size(); ++i) {
        if (priced[i].minutes > m_room.minutes || (priced[i].isMessy && m_room.messy == 0))
            continue;
        auto &group =
            dearest[2 * static_cast<std::size_t>(priced[i].minutes) + (priced[i].isMessy ? 1 : 0)];
        if (group.size() == m_room.slots && !dearer(i, group.back()))
            continue;
        group.insert(std::ranges::upper_bound(group, i, dearer), i);
        if (group.size() > m_room.slots)
            group.pop_back();
    }
    for (const auto &group : dearest) {
        for (const std::size_t place : group) {
            m_kept.push_back(place);
            m_things.push_back(priced[place]);
        }
    }
}

/// From many taken to few, so that nothing is taken twice.
void BestSums::add(std::size_t kept, const Priced &thing)
{
    const int mess = thing.isMessy ? 1 : 0;
    const std::size_t states = m_sums.size();
    for (std::size_t slots = m_room.slots; slots > 0; --slots) {
        for (int messy = m_room.messy; messy >= mess; --messy) {
            const std::size_t to = stateOf({slots, 0, messy});
            const std::size_t from = stateOf({slots - 1, 0, messy - mess});
            for (int minutes = thing.minutes; minutes <= m_room.minutes; ++minutes) {
                const auto at = static_cast<std::size_t>(minutes);
                const std::int64_t sum =
                    m_sums[from + at - static_cast<std::size_t>(thing.minutes)] + thing.price;
                if (sum > m_sums[to + at]) {
                    m_sums[to + at] = sum;
                    m_taken[kept * states + to + at] = 1;
                }
            }
        }
    }
}

std::optional<std::int64_t> BestSums::best(const Room &room) const
{
    if (room.minutes < 0 || room.messy < 0)
        return std::nullopt;
    const Room within{room.slots, std::min(room.minutes, m_room.minutes),
                      std::min(room.messy, m_room.messy)};
    const std::int64_t sum = m_sums[stateOf(within)];
    return sum > nothing / 2 ? std::optional(sum) : std::nullopt;
}

std::vector<std::size_t> BestSums::choice() const
{
    std::vector<std::size_t> chosen;
    if (!best(m_room))
        return chosen;
    Room left = m_room;
    for (std::size_t i = m_kept.size(); i > 0 && left.slots > 0; --i) {
        if (m_taken[(i - 1) * m_sums.size() + stateOf(left)] == 0)
            continue;
        chosen.push_back(m_kept[i - 1]);
        --left.slots;
        left.minutes -= m_things[i - 1].minutes;
        left.messy -= m_things[i - 1].isMessy ? 1 : 0;
    }
    return chosen;
}

} // namespace lidlark::rotation
