#include "core/child/goal_events.h"

#include "core/journal/fields.h"

namespace lidlark::child {

namespace {

using Json = nlohmann::json;

std::vector<std::string> textsAt(const Json &object, const char *key)
{
    std::vector<std::string> texts;
    const auto found = object.find(key);
    if (found == object.end() || !found->is_array())
        return texts;
    for (const Json &value : *found) {
        if (value.is_string())
            texts.push_back(value.get<std::string>());
    }
    return texts;
}

} // namespace

std::string fieldsOf(const ChildGoal &childGoal)
{
    const Goal &goal = childGoal.goal;
    Json skills = Json::array();
    for (const catalogue::Skill skill : goal.skills)
        skills.push_back(catalogue::skillCodes.of(skill));
    Json areas = Json::array();
    for (const catalogue::LifeArea area : goal.lifeAreas)
        areas.push_back(catalogue::lifeAreaNames.of(area));
    return Json{{"id", goal.id},
                {"child", childGoal.child.value},
                {"words", goal.words},
                {"short", goal.shortWords},
                {"levels", goal.levels},
                {"now", goal.now},
                {"agreed", toText(goal.agreedOn)},
                {"review", toText(goal.reviewOn)},
                {"skills", skills},
                {"areas", areas}}
        .dump();
}

std::optional<ChildGoal> goalFromFields(const std::string &text)
{
    const journal::Fields fields(text);
    const auto id = fields.text("id");
    const auto child = fields.text("child");
    const auto words = fields.text("words");
    const auto now = fields.whole("now", -2, 2);
    const auto agreed = dayFromText(fields.text("agreed").value_or(""));
    const auto review = dayFromText(fields.text("review").value_or(""));
    Goal goal;
    goal.levels = textsAt(fields.json(), "levels");
    if (!id || !child || !words || !now || !agreed || !review || goal.levels.size() != 5)
        return std::nullopt;
    goal.id = *id;
    goal.words = *words;
    goal.shortWords = fields.text("short").value_or(*words);
    goal.now = *now;
    goal.agreedOn = *agreed;
    goal.reviewOn = *review;
    for (const std::string &code : textsAt(fields.json(), "skills")) {
        if (const auto skill = catalogue::skillCodes.parse(code))
            goal.skills.push_back(*skill);
    }
    for (const std::string &name : textsAt(fields.json(), "areas")) {
        if (const auto area = catalogue::lifeAreaNames.parse(name))
            goal.lifeAreas.push_back(*area);
    }
    return ChildGoal{{*child}, goal};
}

} // namespace lidlark::child
