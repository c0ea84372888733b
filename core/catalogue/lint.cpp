#include "core/catalogue/lint.h"

#include "core/catalogue/lint_rules.h"
#include "core/catalogue/own_files.h"

namespace lidlark::catalogue {

namespace {

std::string toddlerQuestion(const Activity &activity)
{
    std::string things;
    for (const ItemUse &use : activity.items)
        things += (things.empty() ? "" : ", ") + use.item.value;
    std::string tags;
    for (const Tag tag : activity.cautions.list())
        tags += " " + std::string(tagNames.of(tag));
    return "Is " + std::to_string(activity.ageFloorMonths) +
           " months right for its most dangerous item, and still right with a toddler sibling in "
           "the room? It uses " +
           (things.empty() ? "nothing" : things) + " and carries" +
           (tags.empty() ? " no caution" : tags) + ".";
}

} // namespace

std::vector<LintFinding> lint(const Activity &activity, const Catalogue &catalogue)
{
    LintFindings findings;
    lintReading(activity, findings);
    lintHome(activity, catalogue, findings);
    lintFloor(activity, findings);
    lintGradings(activity, findings);
    lintWays(activity, findings);
    lintClaims(activity, findings);
    lintTalk(activity, findings);
    lintColour(activity, findings);
    if (!isOwnId(activity.id.value)) // drawn with its first thing
        lintDrawings(activity, findings);
    lintOfItsOwn(activity, catalogue, findings);
    return findings;
}

std::vector<HumanQuestion> questionsForPeople(const Activity &activity)
{
    return {
        {1, "Is it play a child would ask for again, or an exercise with a costume?"},
        {2, "Could a tired adult start it from the picture alone?"},
        {5, toddlerQuestion(activity)},
        {9, "Could each drawing be understood in grey, mirrored, by someone who does not read?"},
        {10, "Would the name \"" + activity.name +
                 "\" survive translation, and is it nobody else's outside this catalogue?"},
    };
}

} // namespace lidlark::catalogue
