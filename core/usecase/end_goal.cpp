#include "core/usecase/end_goal.h"

#include "core/store/box_repository.h"
#include "core/store/recording.h"
#include "core/usecase/child_goals.h"
#include "core/usecase/say_one.h"
#include "core/usecase/typed_line.h"

namespace lidlark::usecase {

namespace {

/// @p turn is dated today, and said beside the goal as it was agreed: its own baseline, and not
/// what was rated since.
Outcome sayTurn(Workplace &workplace, const goals::GoalRecord &record, goals::GoalTurn turn)
{
    const Result<DayPart> today = store::todayOf(workplace.clock);
    if (!today)
        return today.error();
    turn.on = today->day;
    goals::AgreedGoal asAgreed = record.current().goal;
    asAgreed.now = asAgreed.baseline;
    const auto box = store::BoxRepository(workplace.database).boxOfChild(record.child);
    if (!box)
        return box.error();
    return sayOne(workplace, {journal::LaneKind::Goals, box->id.value}, journal::Kind::Goal,
                  goals::fieldsOf(goals::ChildsGoal{record.child, asAgreed, turn}));
}

/// The goal that is to turn. @param ended whether it has to have ended before.
Result<goals::GoalRecord> goalToTurn(Workplace &workplace, const std::string &childAlias,
                                     const std::string &goal, bool ended)
{
    if (workplace.device.role != store::Role::Therapist &&
        workplace.device.role != store::Role::Parent)
        return Error{ErrorCode::NotAllowed, "goal"};
    auto record = childGoal(workplace, childAlias, goal);
    if (record && record->ending.has_value() != ended)
        return Error{ErrorCode::Invalid, ended ? "goal: it has not ended" : "goal: it has ended"};
    return record;
}

} // namespace

Outcome endGoal(Workplace &workplace, const std::string &childAlias, const GoalEnd &end)
{
    const auto record = goalToTurn(workplace, childAlias, end.goal, false);
    if (!record)
        return record.error();
    if (!goals::ends(end.why))
        return Error{ErrorCode::Invalid, "why: empty"};
    const auto words = typedLine("reason", end.words, goals::longestTurnWords);
    if (!words)
        return words.error();
    return sayTurn(workplace, *record, {end.why, {}, *words, {}});
}

Outcome takeUpGoal(Workplace &workplace, const std::string &childAlias, const std::string &goal)
{
    const auto record = goalToTurn(workplace, childAlias, goal, true);
    if (!record)
        return record.error();
    return sayTurn(workplace, *record, {goals::Turn::TakenUp, {}, {}, {}});
}

} // namespace lidlark::usecase
