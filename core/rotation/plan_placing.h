#pragma once

#include "core/rotation/day_room.h"

#include <cstdint>
#include <functional>
#include <span>
#include <vector>

namespace lidlark::rotation {

/// Finds days for entries: what a plan is worth does not depend on them, but only some sets have
/// any. Entries with the fewest days left first, each tried on every day; two days that are still
/// empty and have equal rules are the same, so one of them is tried. Complete: what it calls
/// impossible is.
class PlanPlacing
{
public:
    enum class Outcome { Placed, Impossible, NotKnown };

    /// @param rooms with what is pinned in them.
    /// @param isOver asked at every step.
    PlanPlacing(const MenuProblem &problem, std::vector<DayRoom> rooms,
                const std::function<bool()> &isOver)
        : m_problem(problem), m_rooms(std::move(rooms)), m_isOver(isOver)
    {
    }

    /// @param entries without the pinned ones; where they are fewer than the places left, days for
    /// them alone are looked for.
    /// @param patience so many steps at most.
    Outcome place(std::span<const std::size_t> entries, std::int64_t patience);
    /// The days that were found last, with the pinned entries; ascending.
    [[nodiscard]] const std::vector<std::vector<std::size_t>> &days() const { return m_days; }

private:
    bool placeRest(std::size_t placed);
    bool isStuck(std::size_t placed, std::size_t &next);
    [[nodiscard]] bool minutesCannotFill(std::size_t placed);
    bool tryDays(std::size_t placed);
    [[nodiscard]] bool isLikeEarlier(std::size_t day) const;
    void keep();

    const MenuProblem &m_problem;
    std::vector<DayRoom> m_rooms;
    const std::function<bool()> &m_isOver;
    std::vector<std::size_t> m_entries;      ///< Those placed first.
    std::vector<std::vector<int>> m_fitting; ///< For each day the minutes of those that fit there.
    bool m_fillsAll = false;
    std::int64_t m_patience = 0;
    std::vector<std::vector<std::size_t>> m_days;
};

} // namespace lidlark::rotation
