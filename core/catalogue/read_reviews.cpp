#include "core/catalogue/read_reviews.h"

#include "core/catalogue/activity.h"

#include <algorithm>

namespace lidlark::catalogue {

namespace {

constexpr int languageLimit = 40;
/// activities.md 1.1: "due no later than 24 months".
constexpr int monthsToDue = 24;

Day readDay(RecordReader &line, std::string_view key)
{
    const std::optional<Day> day = dayFromText(line.text(key));
    if (!day)
        line.complain(key, "must be a day, such as 2027-01-11");
    return day.value_or(Day{});
}

bool isLanguageCode(std::string_view text)
{
    return text.size() == 2 &&
           std::ranges::all_of(text, [](char c) { return c >= 'a' && c <= 'z'; });
}

} // namespace

std::vector<Review> readReviews(RecordReader &record)
{
    std::vector<Review> reviews;
    if (!record.has("reviews"))
        return reviews;
    for (RecordReader &line : record.records("reviews", {0, languageLimit})) {
        Review review{line.text("language"), line.word("by", reviewerRoleNames),
                      readDay(line, "on"), readDay(line, "due")};
        if (!isLanguageCode(review.language))
            line.complain("language", "must be two small letters, such as en (ISO 639-1)");
        if (review.due <= review.on || wholeMonthsBetween(review.on, review.due) >= monthsToDue)
            line.complain("due", "must be after the review, and within 24 months of it");
        if (std::ranges::find(reviews, review.language, &Review::language) != reviews.end())
            line.complain("language", "is listed twice");
        line.finish();
        reviews.push_back(std::move(review));
    }
    return reviews;
}

void checkReviews(const Activity &activity, Findings &findings)
{
    const bool signedOnce =
        std::ranges::find(activity.reviews, writtenIn, &Review::language) != activity.reviews.end();
    if (activity.status == Status::Reviewed && !signedOnce)
        findings.addAt("status", "a reviewed entry needs a line in reviews for its language, en");
    if (activity.status == Status::AwaitingReview && signedOnce)
        findings.addAt("status", "is awaiting-review, but reviews says who has reviewed it");
}

} // namespace lidlark::catalogue
