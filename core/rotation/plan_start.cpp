#include "core/rotation/plan_start.h"

#include <algorithm>
#include <tuple>

namespace lidlark::rotation {

namespace {

/// The one of the entries on no day with the largest gain among those that @p dayFor finds a day
/// for.
template <class DayFor>
bool putBest(PlanDraft &draft, std::span<const std::size_t> entries, const DayFor &dayFor)
{
    std::size_t best = nowhere;
    std::size_t bestDay = nowhere;
    int most = 0;
    for (const std::size_t entry : entries) {
        if (draft.dayOf(entry) != nowhere)
            continue;
        const int gain = draft.gain(entry);
        if (best != nowhere && gain <= most)
            continue;
        const std::size_t day = dayFor(entry);
        if (day != nowhere) {
            best = entry;
            bestDay = day;
            most = gain;
        }
    }
    if (best != nowhere)
        draft.put(best, bestDay);
    return best != nowhere;
}

/// Puts @p entry on a day where it fits once one of those there has moved to another day.
bool putByMoving(PlanDraft &draft, std::span<const std::size_t> movable, std::size_t entry)
{
    for (const std::size_t other : movable) {
        const std::size_t from = draft.dayOf(other);
        if (from == nowhere)
            continue;
        draft.takeOut(other);
        if (draft.room(from).fits(entry)) {
            draft.put(entry, from);
            if (const std::size_t to = draft.roomiestFor(other); to != nowhere) {
                draft.put(other, to);
                return true;
            }
            draft.takeOut(entry);
        }
        draft.put(other, from);
    }
    return false;
}

/// One entry out, another in, and what that changes.
struct Exchange {
    int change = 0;
    std::size_t out = 0;
    std::size_t in = 0;
};

bool risesMore(const Exchange &one, const Exchange &other)
{
    return std::tuple(-one.change, one.out, one.in) <
           std::tuple(-other.change, other.out, other.in);
}

/// The exchanges that raise the value, the best first; of one entry out only the best few.
std::vector<Exchange> risingExchanges(PlanDraft &draft, std::span<const std::size_t> entries)
{
    constexpr std::ptrdiff_t mostForOne = 64;
    std::vector<Exchange> rising;
    for (const std::size_t out : entries) {
        const std::size_t day = draft.dayOf(out);
        if (day == nowhere)
            continue;
        const int before = draft.value();
        const auto first = static_cast<std::ptrdiff_t>(rising.size());
        draft.takeOut(out);
        for (const std::size_t in : entries) {
            if (in == out || draft.dayOf(in) != nowhere)
                continue;
            const int change = draft.value() + draft.gain(in) - before;
            if (change > 0)
                rising.push_back({change, out, in});
        }
        draft.put(out, day);
        if (std::ssize(rising) - first > mostForOne) {
            std::nth_element(rising.begin() + first, rising.begin() + first + mostForOne,
                             rising.end(), risesMore);
            rising.resize(static_cast<std::size_t>(first + mostForOne));
        }
    }
    std::ranges::sort(rising, risesMore);
    return rising;
}

bool exchange(PlanDraft &draft, std::span<const std::size_t> entries, const Exchange &wanted)
{
    const std::size_t day = draft.dayOf(wanted.out);
    draft.takeOut(wanted.out);
    if (const std::size_t to = draft.roomiestFor(wanted.in); to != nowhere) {
        draft.put(wanted.in, to);
        return true;
    }
    if (putByMoving(draft, entries, wanted.in))
        return true;
    draft.put(wanted.out, day);
    return false;
}

} // namespace

void fillDayByDay(PlanDraft &draft, std::span<const std::size_t> entries)
{
    for (std::size_t day = 0; day < draft.rooms().size(); ++day) {
        const auto thatDay = [&](std::size_t entry) {
            return draft.room(day).fits(entry) ? day : nowhere;
        };
        while (putBest(draft, entries, thatDay)) {
        }
    }
}

void fillFirstDays(PlanDraft &draft, std::span<const std::size_t> entries)
{
    const auto firstDay = [&](std::size_t entry) {
        const auto rooms = draft.rooms();
        const auto room =
            std::ranges::find_if(rooms, [&](const DayRoom &one) { return one.fits(entry); });
        return room == rooms.end() ? nowhere : static_cast<std::size_t>(room - rooms.begin());
    };
    while (putBest(draft, entries, firstDay)) {
    }
}

void fillRoomiestDays(PlanDraft &draft, std::span<const std::size_t> entries)
{
    while (putBest(draft, entries, [&](std::size_t entry) { return draft.roomiestFor(entry); })) {
    }
}

void fillInOrder(PlanDraft &draft, std::span<const std::size_t> entries)
{
    for (const std::size_t entry : entries) {
        if (draft.isFull())
            return;
        const std::size_t day = draft.dayOf(entry) == nowhere ? draft.roomiestFor(entry) : nowhere;
        if (day != nowhere)
            draft.put(entry, day);
    }
    for (const std::size_t entry : entries) {
        if (draft.isFull())
            return;
        if (draft.dayOf(entry) == nowhere)
            putByMoving(draft, entries, entry);
    }
}

void improveByExchange(PlanDraft &draft, std::span<const std::size_t> entries,
                       const std::function<bool()> &isOver)
{
    for (bool better = true; better;) {
        better = false;
        for (const Exchange &wanted : risingExchanges(draft, entries)) {
            if (isOver && isOver())
                return;
            if (exchange(draft, entries, wanted)) {
                better = true;
                break;
            }
        }
    }
}

} // namespace lidlark::rotation
