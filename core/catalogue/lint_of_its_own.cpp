#include "core/catalogue/likeness.h"
#include "core/catalogue/lint_rules.h"
#include "core/catalogue/own_files.h"

#include <algorithm>

namespace lidlark::catalogue {

namespace {

/// Of the runs of three words: more than this reads like the same line again. [P]
constexpr double tooAlike = 0.7;

/// Lines of one kind stand in the same place on the screen, so they are compared with each other.
enum class LineKind { Step, Grading, Talk };

struct OwnLine {
    LineKind kind;
    std::string field;
    BareLine bare;
};

std::optional<LineKind> kindOf(const std::string &field)
{
    if (field.ends_with(".alt"))
        return std::nullopt;
    if (field.starts_with("steps["))
        return LineKind::Step;
    if (field.starts_with("easier[") || field.starts_with("harder["))
        return LineKind::Grading;
    if (field.starts_with("say["))
        return LineKind::Talk;
    return std::nullopt;
}

std::vector<OwnLine> ownLines(const Activity &activity)
{
    std::vector<OwnLine> lines;
    for (const FamilyLine &line : everyLine(activity)) {
        if (const auto kind = kindOf(line.field))
            lines.push_back({*kind, line.field, bareLine(line.text)});
    }
    return lines;
}

void compareLine(const OwnLine &line, const OwnLine &theirs, const std::string &other,
                 LintFindings &findings)
{
    const std::string place = other + " " + theirs.field;
    if (line.bare.words == theirs.bare.words)
        findings.push_back({LintRule::OfItsOwn, line.field, "word for word the line of " + place,
                            "Say it another way."});
    else if (likeness(line.bare, theirs.bare) > tooAlike)
        findings.push_back({LintRule::OfItsOwn, line.field, "reads like the line of " + place,
                            "Change its opening and its verbs."});
}

std::vector<std::string> drawingsOf(const Activity &activity)
{
    std::vector<std::string> names{activity.picture.drawing};
    for (const Step &step : activity.steps) {
        if (step.picture)
            names.push_back(step.picture->drawing);
    }
    return names;
}

void compareDrawings(const Activity &activity, const Activity &other, LintFindings &findings)
{
    const std::vector<std::string> theirs = drawingsOf(other);
    for (const std::string &name : drawingsOf(activity)) {
        if (std::find(theirs.begin(), theirs.end(), name) != theirs.end())
            findings.push_back({LintRule::Drawings, "picture",
                                other.id.value + " shows " + name + " too",
                                "Draw its own picture."});
    }
}

} // namespace

void lintOfItsOwn(const Activity &activity, const Catalogue &catalogue, LintFindings &findings)
{
    const std::vector<OwnLine> mine = ownLines(activity);
    for (const Activity &other : catalogue.activities()) {
        if (other.id == activity.id)
            continue;
        if (bareLine(other.name).words == bareLine(activity.name).words)
            findings.push_back({LintRule::OfItsOwn, "name",
                                other.id.value + " has this name already", "Find another one."});
        // A therapist changes one of ours for one child, and keeps of its lines what is good.
        if (isOwnId(activity.id.value) || isOwnId(other.id.value))
            continue;
        compareDrawings(activity, other, findings);
        for (const OwnLine &theirs : ownLines(other)) {
            for (const OwnLine &line : mine) {
                if (line.kind == theirs.kind)
                    compareLine(line, theirs, other.id.value, findings);
            }
        }
    }
}

} // namespace lidlark::catalogue
