#pragma once

#include "core/base/day.h"
#include "core/base/id.h"
#include "core/catalogue/skill.h"

#include <optional>
#include <string>
#include <vector>

namespace lidlark::child {

/// An age that is only known roughly. Safety reads the youngest possible: a birth month counts as
/// its last day, a band ("two years") as its youngest end on the day it was said (events.md 8.1).
struct Age {
    Day latestBirth; ///< The child was born on this day or earlier.

    /// Completed months of the youngest age that fits. Negative before birth.
    [[nodiscard]] int youngestMonths(Day on) const { return wholeMonthsBetween(latestBirth, on); }
    bool operator==(const Age &) const = default;
};

/// @param month 1 to 12. @returns nothing for a month that does not exist.
std::optional<Age> ageFromBirthMonth(int year, int month);
/// The age of somebody who was at least @p months old on @p saidOn.
Age ageFromMonths(int months, Day saidOn);
/// The age of somebody who was @p years old on @p saidOn, with the birthday in @p birthMonth: 1 to
/// 12, or 0 when nobody said. The youngest child whom both fit.
Age ageFromYears(int years, int birthMonth, Day saidOn);

/// A goal in the family's words with its five levels, -2 to +2 (design.md 7).
struct Goal {
    std::string id;
    std::string words;               ///< "Opens his lunch tub at school".
    std::string shortWords;          ///< For a why line: "opening his lunch tub".
    std::vector<std::string> levels; ///< Five, from -2 to +2.
    int now = -1;                    ///< Level last agreed, -2 to +2.
    Day agreedOn;
    Day reviewOn;
    std::vector<catalogue::Skill> skills;
    std::vector<catalogue::LifeArea> lifeAreas;
    bool operator==(const Goal &) const = default;
};

/// The words of @p level, -2 to +2.
inline const std::string &levelOf(const Goal &goal, int level)
{
    return goal.levels[static_cast<std::size_t>(level + std::ptrdiff_t{2})];
}

/// What is known of a child for choosing play. No surname, no birth date (job.md D2).
struct Child {
    ChildId id;
    std::string alias;
    std::optional<Age> age;     ///< Unknown: only the few entries of activities.md 2.1.1.
    bool energyLimited = false; ///< Set by the therapist: tires fast.
    std::vector<Goal> goals;
};

} // namespace lidlark::child
