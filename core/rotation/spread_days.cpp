#include "core/rotation/spread_days.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <numeric>

namespace lidlark::rotation {

namespace {

/// Lower is better; the first that differs decides.
using Crowding = std::array<int, 3>;

Crowding crowdingOf(std::span<const DayUse> week)
{
    Crowding crowding{};
    for (std::size_t day = 0; day < week.size(); ++day) {
        crowding[0] += static_cast<int>(day) < week[day].earliest ? 1 : 0;
        if (day == 0)
            continue;
        crowding[1] += (week[day].families & week[day - 1].families) != 0 ? 1 : 0;
        crowding[2] += (week[day].skills & week[day - 1].skills) != 0 ? 1 : 0;
    }
    return crowding;
}

} // namespace

std::vector<std::size_t> spreadOver(std::span<const DayUse> planned,
                                    std::span<const std::optional<DayUse>> days)
{
    std::vector<std::size_t> open;
    std::vector<DayUse> week;
    for (std::size_t day = 0; day < days.size(); ++day) {
        if (!days[day])
            open.push_back(day);
        week.push_back(days[day].value_or(DayUse{}));
    }
    assert(planned.size() <= open.size() && open.size() <= 7);
    open.resize(planned.size());
    std::vector<std::size_t> order(planned.size());
    std::iota(order.begin(), order.end(), 0);
    std::vector<std::size_t> best;
    Crowding least{};
    do {
        for (std::size_t place = 0; place < order.size(); ++place)
            week[open[place]] = planned[order[place]];
        const Crowding crowding = crowdingOf(week);
        if (best.empty() || crowding < least) {
            best = order;
            least = crowding;
        }
    } while (std::ranges::next_permutation(order).found);
    std::vector<std::size_t> dayOf(planned.size());
    for (std::size_t place = 0; place < best.size(); ++place)
        dayOf[best[place]] = open[place];
    return dayOf;
}

} // namespace lidlark::rotation
