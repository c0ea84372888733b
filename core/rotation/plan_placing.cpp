#include "core/rotation/plan_placing.h"

#include "core/rotation/plan_draft.h"

#include <algorithm>
#include <numeric>
#include <tuple>

namespace lidlark::rotation {

PlanPlacing::Outcome PlanPlacing::place(std::span<const std::size_t> entries, std::int64_t patience)
{
    m_entries.assign(entries.begin(), entries.end());
    std::size_t places = 0;
    for (const DayRoom &room : m_rooms)
        places += room.placesLeft();
    m_fillsAll = places == entries.size();
    m_patience = patience;
    if (placeRest(0))
        return Outcome::Placed;
    return m_patience < 0 ? Outcome::NotKnown : Outcome::Impossible;
}

bool PlanPlacing::placeRest(std::size_t placed)
{
    if (placed == m_entries.size()) {
        keep();
        return true;
    }
    if (--m_patience < 0 || (m_isOver && m_isOver())) {
        m_patience = -1;
        return false;
    }
    std::size_t next = placed;
    if (isStuck(placed, next))
        return false;
    std::swap(m_entries[placed], m_entries[next]);
    return tryDays(placed);
}

/// Whether an entry has no day left, or a day cannot be filled.
/// @param next is set to the entry with the fewest days.
bool PlanPlacing::isStuck(std::size_t placed, std::size_t &next)
{
    m_fitting.resize(m_rooms.size());
    for (std::vector<int> &minutes : m_fitting)
        minutes.clear();
    std::tuple<std::size_t, int> fewest{m_rooms.size() + 1, 0};
    for (std::size_t i = placed; i < m_entries.size(); ++i) {
        const int minutes = m_problem.entries[m_entries[i]].minutes;
        std::size_t days = 0;
        for (std::size_t day = 0; day < m_rooms.size(); ++day) {
            if (!m_rooms[day].fits(m_entries[i]))
                continue;
            ++days;
            m_fitting[day].push_back(minutes);
        }
        if (days == 0)
            return true;
        const std::tuple<std::size_t, int> here{days, -minutes};
        if (here < fewest) {
            fewest = here;
            next = i;
        }
    }
    return m_fillsAll && minutesCannotFill(placed);
}

/// Each day takes at least its shortest entries and at most its longest ones; the minutes that it
/// leaves over even then are lost, and all days together have only so many to lose.
bool PlanPlacing::minutesCannotFill(std::size_t placed)
{
    std::int64_t toLose = 0;
    for (std::size_t i = placed; i < m_entries.size(); ++i)
        toLose -= m_problem.entries[m_entries[i]].minutes;
    for (std::size_t day = 0; day < m_rooms.size(); ++day) {
        const std::size_t places = m_rooms[day].placesLeft();
        const std::int64_t left = m_rooms[day].minutesLeft();
        std::vector<int> &minutes = m_fitting[day];
        if (minutes.size() < places)
            return true;
        std::ranges::sort(minutes);
        const auto shortest = static_cast<std::ptrdiff_t>(places);
        if (std::accumulate(minutes.begin(), minutes.begin() + shortest, std::int64_t{0}) > left)
            return true;
        toLose += std::min(
            left, std::accumulate(minutes.end() - shortest, minutes.end(), std::int64_t{0}));
    }
    return toLose < 0;
}

/// The day with the most minutes for each place left first.
bool PlanPlacing::tryDays(std::size_t placed)
{
    const std::size_t entry = m_entries[placed];
    std::vector<std::pair<std::int64_t, std::size_t>> days;
    for (std::size_t day = 0; day < m_rooms.size(); ++day) {
        if (m_rooms[day].fits(entry) && !isLikeEarlier(day))
            days.emplace_back(-minutesAPlace(m_rooms[day]), day);
    }
    std::ranges::sort(days);
    for (const auto &[minutes, day] : days) {
        m_rooms[day].put(entry);
        const bool done = placeRest(placed + 1);
        m_rooms[day].takeOut(entry);
        if (done || m_patience < 0)
            return done;
    }
    return false;
}

bool PlanPlacing::isLikeEarlier(std::size_t day) const
{
    if (!m_rooms[day].entries().empty())
        return false;
    for (std::size_t other = 0; other < day; ++other) {
        if (m_rooms[other].entries().empty() && m_rooms[other].rules() == m_rooms[day].rules())
            return true;
    }
    return false;
}

void PlanPlacing::keep()
{
    m_days.clear();
    for (const DayRoom &room : m_rooms) {
        m_days.emplace_back(room.entries().begin(), room.entries().end());
        std::ranges::sort(m_days.back());
    }
}

} // namespace lidlark::rotation
