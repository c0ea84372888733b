#include "core/usecase/stock_history.h"

#include <algorithm>
#include <map>

namespace lidlark::usecase {

namespace {

/// What came less what went, by day.
std::map<Day, int> changesByDay(const store::ItemRow &row)
{
    std::map<Day, int> changes;
    for (const box::Arrival &arrival : row.arrivals)
        changes[arrival.day] += arrival.pieces;
    for (const box::DatedUse &use : row.uses)
        changes[use.day] -= use.pieces;
    return changes;
}

std::vector<Day> openingDays(const store::ItemRow &row)
{
    std::vector<Day> days;
    for (const box::Piece &piece : row.care.pieces) {
        if (piece.opened)
            days.push_back(*piece.opened);
    }
    std::sort(days.begin(), days.end());
    return days;
}

/// The day on which each piece that is gone went, in order.
std::vector<Day> endingDays(const store::ItemRow &row)
{
    std::vector<Day> days;
    for (const box::DatedUse &use : row.uses)
        days.insert(days.end(), static_cast<std::size_t>(use.pieces), use.day);
    std::sort(days.begin(), days.end());
    return days;
}

} // namespace

std::vector<forecast::UseDay> useDaysOf(const store::ItemRow &row)
{
    std::vector<forecast::UseDay> days;
    days.reserve(row.uses.size());
    for (const box::DatedUse &use : row.uses)
        days.push_back({use.day, use.pieces});
    return days;
}

std::vector<forecast::DaySpan> daysWithout(const store::ItemRow &row, Day today)
{
    std::vector<forecast::DaySpan> spans;
    int stock = 0;
    std::optional<Day> emptySince;
    for (const auto &[day, change] : changesByDay(row)) {
        if (emptySince && change > 0 && *emptySince <= day - 1)
            spans.push_back({*emptySince, day - 1});
        stock += change;
        emptySince = stock > 0 ? std::nullopt : std::optional(day + 1);
    }
    if (emptySince && *emptySince <= today && row.high == 0)
        spans.push_back({*emptySince, today});
    return spans;
}

std::vector<forecast::SeenLife> livesOf(const store::ItemRow &row, Day today)
{
    const std::vector<Day> endings = endingDays(row);
    std::vector<forecast::SeenLife> lives;
    std::size_t next = 0;
    for (const Day opened : openingDays(row)) {
        if (opened > today)
            continue;
        while (next < endings.size() && endings[next] < opened)
            ++next;
        const bool ended = next < endings.size() && endings[next] <= today;
        const Day last = ended ? endings[next++] : today;
        lives.push_back({static_cast<double>(last - opened), ended});
    }
    return lives;
}

} // namespace lidlark::usecase
