#include "core/goals/agreed_goal.h"

#include "core/goals/attainment.h"
#include "core/goals/goal_version.h"
#include "core/journal/fields.h"

namespace lidlark::goals {

namespace {

std::optional<GoalTurn> turnFrom(const journal::Fields &fields)
{
    const auto turn = turnNames.parse(fields.text("turn").value_or(""));
    const auto day = dayFromText(fields.text("turned").value_or(""));
    if (!turn || !day)
        return std::nullopt;
    return GoalTurn{*turn, *day, fields.text("turn-words").value_or(""), {}};
}

} // namespace

std::string fieldsOf(const ChildsGoal &childsGoal)
{
    auto fields =
        nlohmann::json::parse(child::fieldsOf({childsGoal.child, childsGoal.goal.asChildGoal()}));
    fields["baseline"] = childsGoal.goal.baseline;
    fields["version"] = childsGoal.goal.version;
    fields["weight"] = childsGoal.goal.weight;
    if (!childsGoal.goal.reason.empty())
        fields["reason"] = childsGoal.goal.reason;
    if (childsGoal.turn) {
        fields["turn"] = turnNames.of(childsGoal.turn->turn);
        fields["turned"] = toText(childsGoal.turn->on);
        fields["turn-words"] = childsGoal.turn->words;
    }
    return fields.dump();
}

std::optional<ChildsGoal> agreedFromFields(const std::string &text)
{
    const auto read = child::goalFromFields(text);
    if (!read)
        return std::nullopt;
    const journal::Fields fields(text);
    AgreedGoal goal{read->goal};
    goal.baseline = fields.whole("baseline", lowestLevel, highestLevel).value_or(goal.now);
    goal.version = fields.whole("version", 1, mostVersions).value_or(1);
    goal.weight = fields.whole("weight", 0, heaviestWeight).value_or(1);
    goal.reason = fields.text("reason").value_or("");
    return ChildsGoal{read->child, goal, turnFrom(fields)};
}

} // namespace lidlark::goals
