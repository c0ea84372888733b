#pragma once

#include "catalogue_samples.h"
#include "core/catalogue/lint.h"

/// An entry without findings, and how the tests of the checklist show what was found.
namespace samples {

inline QString textOf(std::string_view text)
{
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

/// The sample of the loader's tests, with what the loader does not ask for.
inline Activity soundEntry()
{
    Activity activity = loadActivity(soundActivity).activities().front();
    activity.easier.front().text = "A larger pot stands close";
    activity.harder.front().text = "A smaller pot stands far away";
    activity.waysIn.oneHand = "The pot stands on the towel, and one hand posts.";
    activity.waysIn.seated = "Pot on the lap board, beads in a dish beside it.";
    return activity;
}

inline Catalogue catalogueWith(std::vector<Activity> others)
{
    const Catalogue items = loadActivity(soundActivity);
    return {items.items(), std::move(others), {}};
}

inline std::vector<LintFinding> findingsOf(const Activity &activity)
{
    return lint(activity, catalogueWith({activity}));
}

inline QString shownFindings(const std::vector<LintFinding> &findings)
{
    QStringList lines;
    for (const LintFinding &finding : findings)
        lines << textOf(lintRuleNames.of(finding.rule)) + " " +
                     QString::fromStdString(finding.field);
    return lines.join("; ");
}

} // namespace samples
