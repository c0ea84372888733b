#include "core/usecase/rate_goal.h"

#include "core/goals/attainment.h"
#include "core/store/box_repository.h"
#include "core/store/recording.h"
#include "core/usecase/child_goals.h"
#include "core/usecase/say_one.h"
#include "core/usecase/typed_line.h"

#include <algorithm>

namespace lidlark::usecase {

namespace {

constexpr std::size_t longestRater = 40;

Result<const goals::GoalVersion *> versionOf(const goals::GoalRecord &record,
                                             const std::optional<goals::VersionKey> &key)
{
    if (!key)
        return &record.current();
    const auto found =
        std::ranges::find_if(record.versions, [&key](const goals::GoalVersion &version) {
            return goals::keyOf(version.goal) == *key;
        });
    if (found == record.versions.end())
        return Error{ErrorCode::NotFound, "these words of the goal"};
    return &*found;
}

Result<std::string> raterOf(const GoalRating &said)
{
    Result<std::string> rater = typedLine("rater", said.rater, longestRater);
    if (rater && rater->empty() && said.role != goals::RatedBy::Together)
        return Error{ErrorCode::Invalid, "rater: empty"};
    return rater;
}

Result<Day> dayOf(Workplace &workplace, const GoalRating &said, const child::Goal &goal)
{
    const Result<DayPart> today = store::todayOf(workplace.clock);
    if (!today)
        return today.error();
    const Day day = said.day.value_or(today->day);
    if (day > today->day)
        return Error{ErrorCode::Invalid, "day: still to come"};
    if (day < goal.agreedOn)
        return Error{ErrorCode::Invalid, "day: before the goal was agreed"};
    return day;
}

} // namespace

Outcome rateGoal(Workplace &workplace, const std::string &childAlias, const GoalRating &said)
{
    if (workplace.device.role != store::Role::Therapist &&
        workplace.device.role != store::Role::Parent)
        return Error{ErrorCode::NotAllowed, "goal"};
    if (said.level < goals::lowestLevel || said.level > goals::highestLevel)
        return Error{ErrorCode::Invalid, "level: none of the five steps"};
    const auto box = store::BoxRepository(workplace.database).boxOf(childAlias);
    if (!box)
        return box.error();
    const auto record = childGoal(workplace, childAlias, said.goal);
    if (!record)
        return record.error();
    const auto version = versionOf(*record, said.version);
    if (!version)
        return version.error();
    const auto rater = raterOf(said);
    const auto day = dayOf(workplace, said, (*version)->goal);
    if (!rater || !day)
        return rater ? day.error() : rater.error();
    const goals::Rating rating{
        said.goal, box->child, goals::keyOf((*version)->goal), said.level, *rater, said.role, *day};
    return sayOne(workplace, {journal::LaneKind::Goals, box->id.value}, journal::Kind::GoalRated,
                  goals::fieldsOf(rating));
}

} // namespace lidlark::usecase
