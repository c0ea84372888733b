#pragma once

#include "core/goals/rating.h"
#include "core/journal/seen.h"

#include <optional>
#include <span>
#include <vector>

namespace lidlark::goals {

/// One wording of a goal and what was said of it.
struct GoalVersion {
    /// As it was last said; `now` is the level last agreed together, else its baseline.
    AgreedGoal goal;
    /// By day, then by rater: one a rater and day, of several the one said last.
    std::vector<Rating> ratings;
    std::string author = {}; ///< Who wrote these words down first, by alias.
    bool operator==(const GoalVersion &) const = default;
};

/// All that is known of one goal.
struct GoalRecord {
    ChildId child;
    std::vector<GoalVersion>
        versions;            ///< By number; never empty. An earlier one keeps its ratings.
    std::size_t inForce = 0; ///< In `versions`.
    /// Every end of it and every taking up, in the order they were written.
    std::vector<GoalTurn> turns = {};
    /// The end that stands: it is none of the child's goals any more. Nothing: it is one.
    std::optional<GoalTurn> ending = std::nullopt;
    bool operator==(const GoalRecord &) const = default;

    [[nodiscard]] const GoalVersion &current() const { return versions[inForce]; }
};

/// The record of one goal. The version in force is the one said last: what has seen another
/// replaces it; of several that had not seen each other the highest number, then the larger
/// (instant, device, counter). Whether it has ended is folded by itself, whatever the words: what
/// was said last of an end or of taking it up holds, by seeing, then by (instant, device, counter),
/// so that other words, a rating or a weight written meanwhile keep their place.
/// @param events all of one goal, in any order; ratings of words that are not there count nothing.
/// @returns nothing where no readable goal is among them.
std::optional<GoalRecord> foldGoal(std::span<const journal::Event> events,
                                   const journal::Seen &seen);

/// What one rater said last of the version, by day; null: nothing.
/// @param rater of no account for what was agreed together.
const Rating *latestBy(const GoalVersion &version, RatedBy role, const std::string &rater);

/// As core/store keeps it in the goal's row, and families and menus read it.
/// @returns nothing once it has ended.
std::optional<child::ChildGoal> inForce(const GoalRecord &record);

} // namespace lidlark::goals
