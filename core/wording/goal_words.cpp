#include "core/wording/goal_words.h"

#include "core/goals/attainment.h"
#include "core/wording/day_words.h"

#include <array>
#include <set>

namespace lidlark::wording {

namespace {

using goals::DraftField;
using goals::DraftFinding;
using goals::DraftMatter;
using goals::RatedBy;

Sentence missingWords(DraftField field)
{
    switch (field) {
    case DraftField::Words:
        return {say("Say what the child will do, in the family's words."), {}};
    case DraftField::Baseline:
        return {say("Choose the step that is how it is today."), {}};
    case DraftField::ReviewOn:
        return {say("Choose a day to look at it again."), {}};
    case DraftField::ShortWords:
    case DraftField::Reason:
    case DraftField::Level:
        break;
    }
    return {say("Say what can be seen at this step."), {}};
}

int longestOf(DraftField field)
{
    if (field == DraftField::Reason)
        return static_cast<int>(goals::longestReason);
    return static_cast<int>(field == DraftField::Level ? goals::longestLevel
                                                       : goals::longestGoalWords);
}

} // namespace

Sentence levelWords(int level)
{
    static constexpr std::array<English, goals::levelCount> words{
        say("Much less than we expect"), say("Less than we expect"), say("What we expect"),
        say("More than we expect"), say("Much more than we expect")};
    return {words[static_cast<std::size_t>(level - goals::lowestLevel)], {}};
}

Sentence findingWords(const DraftFinding &finding)
{
    switch (finding.matter) {
    case DraftMatter::TooLong:
        return {say("That is too long: at most %1 letters."), {inDigits(longestOf(finding.field))}};
    case DraftMatter::NotPlain:
        return {say("One line of plain text only."), {}};
    case DraftMatter::SameAs:
        return {say("The same words as “%1”. Each step needs its own."),
                {levelWords(finding.other)}};
    case DraftMatter::NotAfterAgreed:
        return {say("That has to come after the day it is agreed."), {}};
    case DraftMatter::ReadsAsFeeling:
        return {say("“%1” may read like a feeling or an opinion. What would somebody see?"),
                {finding.word}};
    case DraftMatter::SaysLittle:
        return {say("That is very short. Who does what?"), {}};
    case DraftMatter::Missing:
    case DraftMatter::BeyondTheLevels:
        break;
    }
    return missingWords(finding.field);
}

Sentence ratedByWords(RatedBy role)
{
    // In the order of goals::RatedBy.
    static constexpr std::array<English, 4> words{say("We agreed on it together"),
                                                  say("The family"), say("The therapist"),
                                                  say("Somebody else")};
    return {words[static_cast<std::size_t>(role)], {}};
}

Sentence turnWords(goals::Turn turn)
{
    // In the order of goals::Turn.
    static constexpr std::array<English, 4> words{say("We reached it"), say("It matters less now"),
                                                  say("Another goal takes its place"),
                                                  say("It is taken up again")};
    return {words[static_cast<std::size_t>(turn)], {}};
}

Sentence turnLine(const goals::GoalTurn &turn)
{
    return {say("%1 on %2: %3"), {turn.by, dateWords(turn.on), turnWords(turn.turn)}};
}

Sentence ratingWords(const goals::Rating &rating, const goals::GoalVersion &version)
{
    const std::string &level = child::levelOf(version.goal, rating.level);
    if (rating.role == RatedBy::Together)
        return {say("Agreed together on %1: %2"), {dateWords(rating.day), level}};
    return {say("%1 on %2: %3"), {rating.rater, dateWords(rating.day), level}};
}

std::vector<Sentence> goalSummary(const goals::GoalRecord &record)
{
    const goals::GoalVersion &version = record.current();
    const goals::AgreedGoal &goal = version.goal;
    std::vector<Sentence> lines{{say("Goal: %1"), {goal.words}},
                                {say("When these words were agreed, on %1: %2"),
                                 {dateWords(goal.agreedOn), child::levelOf(goal, goal.baseline)}}};
    if (const goals::Rating *agreed = goals::latestBy(version, RatedBy::Together, {}))
        lines.push_back(ratingWords(*agreed, version));
    else
        lines.push_back({say("We have not agreed together since then where it stands."), {}});
    std::set<std::pair<RatedBy, std::string>> heard;
    for (auto rating = version.ratings.rbegin(); rating != version.ratings.rend(); ++rating) {
        if (rating->role != RatedBy::Together && heard.insert({rating->role, rating->rater}).second)
            lines.push_back(ratingWords(*rating, version));
    }
    if (record.versions.size() > 1)
        lines.push_back({say("Its words have been changed. What was said of earlier words stays "
                             "with them."),
                         {}});
    lines.push_back({say("We look at it again on %1."), {dateWords(goal.reviewOn)}});
    return lines;
}

} // namespace lidlark::wording
