#include "core/catalogue/review.h"

#include "core/catalogue/activity.h"

#include <algorithm>

namespace lidlark::catalogue {

ReviewState reviewState(const Activity &activity, std::string_view language, Day today)
{
    const auto review = std::ranges::find(activity.reviews, language, &Review::language);
    // Words of another language lean on the first: a signed translation of an unsigned entry is
    // not yet a signed entry.
    if (activity.status != Status::Reviewed || review == activity.reviews.end())
        return ReviewState::Awaiting;
    return today > review->due ? ReviewState::Overdue : ReviewState::Reviewed;
}

ReviewCount countReviews(const std::vector<Activity> &activities, std::string_view language,
                         Day today)
{
    ReviewCount count;
    for (const Activity &activity : activities) {
        if (activity.status == Status::Draft || activity.status == Status::Withdrawn)
            continue;
        const ReviewState state = reviewState(activity, language, today);
        ++count.entries;
        count.reviewed += state == ReviewState::Awaiting ? 0 : 1;
        count.overdue += state == ReviewState::Overdue ? 1 : 0;
    }
    return count;
}

} // namespace lidlark::catalogue
