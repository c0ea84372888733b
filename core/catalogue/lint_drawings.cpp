#include "core/catalogue/lint_rules.h"
#include "core/catalogue/list_path.h"

namespace lidlark::catalogue {

namespace {

void lintStep(const Activity &activity, std::size_t index, LintFindings &findings)
{
    const std::string own = "scene-" + activity.id.value + "-" + std::to_string(index + 1);
    if (activity.steps[index].picture->drawing != own)
        findings.push_back({LintRule::Drawings, lineOf("steps", index, "drawing"),
                            "\"" + activity.steps[index].picture->drawing +
                                "\" is not the name of this step's drawing",
                            "Name it " + own + "."});
}

} // namespace

void lintDrawings(const Activity &activity, LintFindings &findings)
{
    const std::string main = "scene-" + activity.id.value;
    if (activity.picture.drawing != main)
        findings.push_back({LintRule::Drawings, "picture.drawing",
                            "\"" + activity.picture.drawing + "\" is not the entry's own",
                            "Name it " + main + "."});
    int undrawn = 0;
    for (std::size_t i = 0; i < activity.steps.size(); ++i) {
        if (activity.steps[i].picture)
            lintStep(activity, i, findings);
        else
            ++undrawn;
    }
    if (undrawn != 1)
        findings.push_back({LintRule::Drawings, "steps",
                            std::to_string(undrawn) + " of " +
                                std::to_string(activity.steps.size()) +
                                " steps have no drawing of their own",
                            "Draw each step but the one that the main picture shows."});
}

} // namespace lidlark::catalogue
