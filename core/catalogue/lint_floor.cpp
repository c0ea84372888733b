#include "core/catalogue/lint_rules.h"

namespace lidlark::catalogue {

namespace {

constexpr int sixYears = 72;

/// Source: safety.md SV-01, "beside: any age with balloon, band, cord, coin, foam, scissors under 6
/// years" (rubber bands are bands); activities.md 1.4, WATER "beside". The gate raises what an
/// entry leaves too loose; an author should mean it.
TagSet besideTags(int floorMonths)
{
    TagSet tags{Tag::Balloon, Tag::Band, Tag::Elastic, Tag::Cord, Tag::Coin, Tag::Foam, Tag::Water};
    if (floorMonths < sixYears)
        tags.add(Tag::Sharp);
    return tags;
}

} // namespace

void lintFloor(const Activity &activity, LintFindings &findings)
{
    if (activity.supervision == Supervision::Beside)
        return;
    for (const Tag tag : (activity.cautions & besideTags(activity.ageFloorMonths)).list())
        findings.push_back({LintRule::Floor, "supervision",
                            "\"" + std::string(supervisionNames.of(activity.supervision)) +
                                "\" is too far away for " + std::string(tagNames.of(tag)),
                            "Write beside, and say in a step where the adult sits."});
}

} // namespace lidlark::catalogue
