#pragma once

#include "core/rotation/day_room.h"
#include "core/rotation/plan_rules.h"

#include <optional>
#include <span>
#include <vector>

namespace lidlark::rotation {

/// No day.
inline constexpr std::size_t nowhere = static_cast<std::size_t>(-1);

/// A plan in the making: what stands on which day, and what it is worth together.
class PlanDraft
{
public:
    /// Empty days. @param problem,days must outlive this.
    PlanDraft(const MenuProblem &problem, std::span<const ChoiceRules> days);

    [[nodiscard]] std::span<const DayRoom> rooms() const { return m_rooms; }
    [[nodiscard]] const DayRoom &room(std::size_t day) const { return m_rooms[day]; }
    [[nodiscard]] std::size_t dayOf(std::size_t entry) const { return m_dayOf[entry]; }
    [[nodiscard]] bool isFull() const { return m_placesLeft == 0; }
    [[nodiscard]] int value() const { return m_value; }
    /// What the entry would add, on whatever day.
    [[nodiscard]] int gain(std::size_t entry) const;
    /// Of the days where the entry fits the one with the most minutes for each place that is left,
    /// the first of several; nowhere: none.
    [[nodiscard]] std::size_t roomiestFor(std::size_t entry) const;

    /// @pre the entry is on no day and fits there.
    void put(std::size_t entry, std::size_t day);
    /// @pre the entry is on a day.
    void takeOut(std::size_t entry);
    /// The entries of each day, ascending.
    [[nodiscard]] std::vector<std::vector<std::size_t>> days() const;

private:
    void count(std::size_t entry, int sign);

    const MenuProblem *m_problem;
    std::vector<DayRoom> m_rooms;
    std::vector<std::size_t> m_dayOf; ///< By entry.
    std::vector<int> m_minutes;       ///< On each curve.
    std::size_t m_placesLeft = 0;
    int m_value = 0;
};

/// The minutes that a room has for each place that is left, in 1/64 minute; @pre a place is left.
std::int64_t minutesAPlace(const DayRoom &room);

/// A draft with what is pinned on its days; nothing when that breaks a rule of a day, or an entry
/// is pinned twice.
std::optional<PlanDraft> pinnedDraft(const MenuProblem &problem, const PlanRules &rules);

} // namespace lidlark::rotation
