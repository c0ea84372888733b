#pragma once

#include "core/child/goal_events.h"
#include "core/goals/goal_turn.h"

#include <optional>
#include <string>

namespace lidlark::goals {

/// A goal with what only those who agree on goals read of it. Families, menus and rows know its
/// base alone, so that no weight can reach them.
struct AgreedGoal : child::Goal {
    int baseline = -1;       ///< Level on the day it was agreed, -2 to +2.
    int version = 1;         ///< Rises with every change of the words (core/goals/goal_version.h).
    int weight = 1;          ///< In the therapist's score alone, 0 to 9 (core/goals/attainment.h).
    std::string reason = {}; ///< Why these words took the place of others; may be empty.
    bool operator==(const AgreedGoal &) const = default;

    /// What families, menus and rows know of it.
    [[nodiscard]] const child::Goal &asChildGoal() const { return *this; }
};

inline constexpr int heaviestWeight = 9; ///< Importance and difficulty of 3 each.

/// An agreed goal and the child it belongs to.
struct ChildsGoal {
    ChildId child;
    AgreedGoal goal;
    /// What becomes of it. The words beside it are then those its author knew, and say nothing new;
    /// a release that knows no end of a goal reads them, and goes on with the goal.
    std::optional<GoalTurn> turn = std::nullopt;
};

/// The fields of a Goal event.
std::string fieldsOf(const ChildsGoal &goal);
/// What came in later releases may be absent: a baseline is then where the goal stood, a first
/// version, a weight of one, no reason, no turn. An end of a sort that is not known is none.
/// @returns nothing where child::goalFromFields reads nothing.
std::optional<ChildsGoal> agreedFromFields(const std::string &fields);

} // namespace lidlark::goals
