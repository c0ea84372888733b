#include "core/usecase/agree_goal.h"

#include "core/store/box_repository.h"
#include "core/store/recording.h"
#include "core/usecase/child_goals.h"
#include "core/usecase/say_one.h"
#include "core/usecase/typed_line.h"

#include <algorithm>

namespace lidlark::usecase {

namespace {

using goals::DraftField;
using goals::DraftFinding;
using goals::DraftMatter;
using goals::GoalDraft;

std::string nameOf(const DraftFinding &finding)
{
    switch (finding.field) {
    case DraftField::Words:
        return "goal";
    case DraftField::ShortWords:
        return "in short";
    case DraftField::Reason:
        return "reason";
    case DraftField::Baseline:
        return "baseline";
    case DraftField::ReviewOn:
        return "review date";
    case DraftField::Level:
        break;
    }
    return "level " + std::string(finding.level > 0 ? "+" : "") + std::to_string(finding.level);
}

std::string reasonOf(DraftMatter matter)
{
    switch (matter) {
    case DraftMatter::TooLong:
        return "too long";
    case DraftMatter::NotPlain:
        return "one line of plain text only";
    case DraftMatter::SameAs:
        return "the same as another step";
    case DraftMatter::BeyondTheLevels:
        return "none of the five steps";
    case DraftMatter::NotAfterAgreed:
        return "not after the day it was agreed";
    case DraftMatter::Missing:
    case DraftMatter::ReadsAsFeeling:
    case DraftMatter::SaysLittle:
        break;
    }
    return "empty";
}

bool readsGoals(const Workplace &workplace)
{
    return workplace.device.role == store::Role::Therapist ||
           workplace.device.role == store::Role::Parent;
}

/// The draft with its lines trimmed and its day of agreement, if it may be saved.
Result<GoalDraft> sound(Workplace &workplace, GoalDraft draft)
{
    if (!readsGoals(workplace))
        return Error{ErrorCode::NotAllowed, "goal"};
    const Result<DayPart> today = store::todayOf(workplace.clock);
    if (!today)
        return today.error();
    if (!draft.agreedOn)
        draft.agreedOn = today->day;
    if (*draft.agreedOn > today->day)
        return Error{ErrorCode::Invalid, "agreed: still to come"};
    if (const auto finding = goals::firstRefusal(goals::findingsOf(draft)))
        return Error{ErrorCode::Invalid, nameOf(*finding) + ": " + reasonOf(finding->matter)};
    // What passed the checks is one plain line, so that only its white space goes.
    draft.words = *typedLine("goal", draft.words, goals::longestGoalWords);
    draft.shortWords = *typedLine("in short", draft.shortWords, goals::longestGoalWords);
    for (std::string &level : draft.levels)
        level = *typedLine("level", level, goals::longestLevel);
    draft.reason = *typedLine("reason", draft.reason, goals::longestReason);
    return draft;
}

goals::AgreedGoal goalOf(const GoalDraft &draft, std::string id, int version)
{
    goals::AgreedGoal goal;
    goal.id = std::move(id);
    goal.words = draft.words;
    goal.shortWords = draft.shortWords.empty() ? draft.words : draft.shortWords;
    goal.levels.assign(draft.levels.begin(), draft.levels.end());
    goal.now = *draft.baseline;
    goal.baseline = *draft.baseline;
    goal.agreedOn = *draft.agreedOn;
    goal.reviewOn = *draft.reviewOn;
    goal.skills = draft.skills;
    goal.lifeAreas = draft.lifeAreas;
    goal.version = version;
    goal.reason = draft.reason;
    return goal;
}

Outcome say(Workplace &workplace, const store::BoxRow &box, const goals::AgreedGoal &goal)
{
    return sayOne(workplace, {journal::LaneKind::Goals, box.id.value}, journal::Kind::Goal,
                  goals::fieldsOf(goals::ChildsGoal{box.child, goal}));
}

int nextVersion(const goals::GoalRecord &record)
{
    int last = 0;
    for (const goals::GoalVersion &version : record.versions)
        last = std::max(last, version.goal.version);
    return last + 1;
}

/// What the event of the version in force says, where only what is no wording changes: its own
/// baseline and day, and not what was rated since.
goals::AgreedGoal withSameWords(const goals::AgreedGoal &inForce, goals::AgreedGoal written)
{
    written.version = inForce.version;
    written.agreedOn = inForce.agreedOn;
    written.baseline = inForce.baseline;
    written.now = inForce.baseline;
    written.weight = inForce.weight;
    written.reason = inForce.reason;
    return written;
}

} // namespace

Result<std::string> agreeGoal(Workplace &workplace, const std::string &childAlias, GoalDraft draft)
{
    const auto box = store::BoxRepository(workplace.database).boxOf(childAlias);
    if (!box)
        return box.error();
    draft.reason.clear(); // no words stood there before
    const Result<GoalDraft> agreed = sound(workplace, std::move(draft));
    if (!agreed)
        return agreed.error();
    const std::string id = workplace.entropy.freshId();
    const Outcome said = say(workplace, *box, goalOf(*agreed, id, 1));
    if (!said)
        return said.error();
    return id;
}

Outcome rewordGoal(Workplace &workplace, const std::string &childAlias, const std::string &goal,
                   GoalDraft draft)
{
    const auto box = store::BoxRepository(workplace.database).boxOf(childAlias);
    if (!box)
        return box.error();
    const Result<GoalDraft> agreed = sound(workplace, std::move(draft));
    const auto record = childGoal(workplace, childAlias, goal);
    if (!agreed || !record)
        return agreed ? record.error() : agreed.error();
    if (record->ending)
        return Error{ErrorCode::Invalid, "goal: it has ended"};
    const int version = nextVersion(*record);
    if (version > goals::mostVersions)
        return Error{ErrorCode::Invalid, "goal: too many versions"};
    goals::AgreedGoal written = goalOf(*agreed, goal, version);
    const goals::AgreedGoal &inForce = record->current().goal;
    written.weight = inForce.weight;
    if (goals::wordingOf(written) == goals::wordingOf(inForce)) {
        if (written.reviewOn <= inForce.agreedOn)
            return Error{ErrorCode::Invalid, "review date: not after the day it was agreed"};
        written = withSameWords(inForce, std::move(written));
    }
    return say(workplace, *box, written);
}

Outcome weighGoal(Workplace &workplace, const std::string &childAlias, const std::string &goal,
                  int weight)
{
    if (workplace.device.role != store::Role::Therapist)
        return Error{ErrorCode::NotAllowed, "goal weight"};
    if (weight < 0 || weight > goals::heaviestWeight)
        return Error{ErrorCode::Invalid, "weight: 0 to 9"};
    const auto box = store::BoxRepository(workplace.database).boxOf(childAlias);
    if (!box)
        return box.error();
    const auto record = childGoal(workplace, childAlias, goal);
    if (!record)
        return record.error();
    const goals::AgreedGoal &inForce = record->current().goal;
    goals::AgreedGoal weighed = withSameWords(inForce, inForce);
    weighed.weight = weight;
    return say(workplace, *box, weighed);
}

Result<GoalDraft> draftOf(Workplace &workplace, const std::string &childAlias,
                          const std::string &goal)
{
    const auto record = childGoal(workplace, childAlias, goal);
    if (!record)
        return record.error();
    const goals::AgreedGoal &inForce = record->current().goal;
    GoalDraft draft;
    draft.words = inForce.words;
    draft.shortWords = inForce.shortWords == inForce.words ? "" : inForce.shortWords;
    std::copy_n(inForce.levels.begin(), goals::levelCount, draft.levels.begin());
    draft.baseline = inForce.now;
    draft.reviewOn = inForce.reviewOn;
    draft.skills = inForce.skills;
    draft.lifeAreas = inForce.lifeAreas;
    return draft;
}

} // namespace lidlark::usecase
