#include "core/goals/rating.h"

#include "core/goals/attainment.h"
#include "core/journal/fields.h"

#include <tuple>

namespace lidlark::goals {

std::string fieldsOf(const Rating &rating)
{
    return nlohmann::json{{"id", rating.goal},
                          {"child", rating.child.value},
                          {"version", toText(rating.version)},
                          {"level", rating.level},
                          {"rater", rating.rater},
                          {"role", ratedByNames.of(rating.role)},
                          {"day", toText(rating.day)}}
        .dump();
}

std::optional<Rating> readRating(const journal::Event &event)
{
    if (event.kind != journal::Kind::GoalRated)
        return std::nullopt;
    const journal::Fields fields(event.fields);
    const auto goal = fields.text("id");
    const auto child = fields.text("child");
    const auto version = versionFromText(fields.text("version").value_or(""));
    const auto level = fields.whole("level", lowestLevel, highestLevel);
    const std::string rater = fields.text("rater").value_or("");
    const auto role = ratedByNames.parse(fields.text("role").value_or(""));
    const auto day = dayFromText(fields.text("day").value_or(""));
    if (!goal || !child || !version || !level || !role || !day ||
        (rater.empty() && role != RatedBy::Together))
        return std::nullopt;
    return Rating{*goal, {*child}, *version, *level, rater, *role, *day};
}

bool samePlace(const Rating &a, const Rating &b)
{
    const bool together = a.role == RatedBy::Together && b.role == RatedBy::Together;
    return a.version == b.version && a.day == b.day &&
           (together || std::tie(a.rater, a.role) == std::tie(b.rater, b.role));
}

} // namespace lidlark::goals
