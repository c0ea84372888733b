#include "core/catalogue/lint_rules.h"
#include "core/catalogue/readability.h"

namespace lidlark::catalogue {

namespace {

/// "Works with one hand" only claims; a way says what the hand does. [P]
constexpr int fewestWordsOfAWay = 6;

void lintWay(const char *field, const std::string &text, const char *remedy, LintFindings &findings)
{
    if (text.empty())
        findings.push_back({LintRule::Ways, field, "is not written", remedy});
    else if (wordsIn(text) < fewestWordsOfAWay)
        findings.push_back(
            {LintRule::Ways, field, "\"" + text + "\" is too short to play by", remedy});
}

} // namespace

void lintWays(const Activity &activity, LintFindings &findings)
{
    lintWay("ways_in.one_hand", activity.waysIn.oneHand,
            "Say what holds still, and what the one hand does.", findings);
    lintWay("ways_in.seated", activity.waysIn.seated,
            "Say how it is played from a chair or a wheelchair.", findings);
}

} // namespace lidlark::catalogue
