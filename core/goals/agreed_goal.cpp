#include "core/goals/agreed_goal.h"

#include "core/goals/attainment.h"
#include "core/goals/goal_version.h"
#include "core/journal/fields.h"

namespace lidlark::goals {

std::string fieldsOf(const ChildsGoal &childsGoal)
{
    auto fields =
        nlohmann::json::parse(child::fieldsOf({childsGoal.child, childsGoal.goal.asChildGoal()}));
    fields["baseline"] = childsGoal.goal.baseline;
    fields["version"] = childsGoal.goal.version;
    fields["weight"] = childsGoal.goal.weight;
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
    return ChildsGoal{read->child, goal};
}

} // namespace lidlark::goals
