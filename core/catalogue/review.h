#pragma once

#include "core/base/day.h"
#include "core/base/enum_names.h"

#include <string>
#include <string_view>
#include <vector>

namespace lidlark::catalogue {

/// Who may sign an entry: a role, never a person (activities.md 1.1).
enum class ReviewerRole {
    OccupationalTherapist,
    Physiotherapist,
    SpeechAndLanguageTherapist,
    Paediatrician
};
inline constexpr EnumNames<ReviewerRole, 4> reviewerRoleNames{
    {"occupational-therapist", "physiotherapist", "speech-and-language-therapist",
     "paediatrician"}};

/// The language our entries are written in; the others are translations of it.
inline constexpr std::string_view writtenIn = "en";

/// One signature under the words of one language.
struct Review {
    std::string language; ///< ISO 639-1, "en".
    ReviewerRole by = ReviewerRole::OccupationalTherapist;
    Day on;
    Day due; ///< To be looked at again by then, at most 24 months later.
    bool operator==(const Review &) const = default;
};

struct Activity;

enum class ReviewState { Awaiting, Reviewed, Overdue };

/// How the words of @p language stand on @p today. Overdue is for the therapist: a family meets
/// such an entry as a reviewed one (activities.md 1.1).
[[nodiscard]] ReviewState reviewState(const Activity &activity, std::string_view language,
                                      Day today);

struct ReviewCount {
    int entries = 0;  ///< Drafts and withdrawn ones apart.
    int reviewed = 0; ///< Overdue ones among them.
    int overdue = 0;
    bool operator==(const ReviewCount &) const = default;
};
[[nodiscard]] ReviewCount countReviews(const std::vector<Activity> &activities,
                                       std::string_view language, Day today);

} // namespace lidlark::catalogue
