#pragma once

#include "core/base/enum_names.h"
#include "core/goals/goal_version.h"
#include "core/journal/event.h"

#include <optional>
#include <string>
#include <vector>

namespace lidlark::goals {

/// Who says which level a goal has reached. `Together` is what family and therapist have agreed on;
/// only that moves the goal's "now".
enum class RatedBy { Together, Family, Therapist, Other };
inline constexpr EnumNames<RatedBy, 4> ratedByNames{{"together", "family", "therapist", "other"}};

/// One person's word about one goal on one day.
struct Rating {
    std::string goal;
    ChildId child;
    VersionKey version; ///< Of which words it was said.
    int level = 0;      ///< -2 to +2.
    std::string rater;  ///< By name; empty only where it was agreed together.
    RatedBy role = RatedBy::Together;
    Day day; ///< That it is about; the event's instant stays the truth about writing.
    auto operator<=>(const Rating &) const = default;
};

/// The fields of a GoalRated.
std::string fieldsOf(const Rating &rating);
/// @returns nothing for another kind, or where a field is missing or means nothing: a level of 3, a
/// day that does not exist, a rating of one person without a name.
std::optional<Rating> readRating(const journal::Event &event);

/// Whether the later one takes the place of the earlier: one rater, one day, one version. Two
/// raters, or two days, stand side by side. What was agreed together has one place a day.
bool samePlace(const Rating &a, const Rating &b);

} // namespace lidlark::goals
