#include "core/catalogue/lint_rules.h"
#include "core/catalogue/phrase_search.h"

#include <algorithm>
#include <array>

namespace lidlark::catalogue {

namespace {

/// Words with which a line promises a result. Source: activities.md 1.5 ("often settles" is as far
/// as a text goes; "practice in real play", never "treatment"). The list itself is our own.
constexpr std::array<std::string_view, 40> promises{
    "cure*",     "treatment*",     "treats",          "treating",       "therap*",
    "heal",      "heals",          "improv*",         "develop*",       "strengthen*",
    "builds up", "build strength", "builds strength", "will help",      "helps with",
    "helps the", "helps them",     "helps to",        "helps your",     "calms",
    "calming",   "calm down",      "soothes",         "soothing",       "fixes",
    "corrects",  "prevents",       "boost*",          "milestone*",     "benefit*",
    "proven",    "guarantee*",     "effective",       "enhanc*",        "promotes",
    "stimulat*", "regulates",      "trains",          "makes stronger", "gets better at"};

/// Mouth and breath play hints at nothing else. Source: activities.md 1.5, "no entry may say or
/// hint at speech gains".
constexpr std::array<std::string_view, 7> speechHints{
    "speech",         "speaking",      "pronounc*",  "articulat*",
    "tongue muscle*", "mouth muscle*", "talk better"};

/// "Ask your therapist first" sends the reader to somebody; it promises nothing.
bool sendsToTherapist(std::string_view text)
{
    return hasPhrase(text, "therapist");
}

template <std::size_t Count>
void lintLine(const FamilyLine &line, const std::array<std::string_view, Count> &phrases,
              const char *problem, const char *remedy, LintFindings &findings)
{
    const std::string lower = folded(line.text);
    for (const std::string_view phrase : phrases) {
        if (!hasPhrase(lower, phrase) || (phrase == "therap*" && sendsToTherapist(lower)))
            continue;
        findings.push_back(
            {LintRule::Claims, line.field, "\"" + shown(phrase) + "\" " + problem, remedy});
    }
}

bool isMouthPlay(const Activity &activity)
{
    const auto oral = [](const std::vector<Skill> &skills) {
        return std::find(skills.begin(), skills.end(), Skill::Orl) != skills.end();
    };
    return oral(activity.skillsMain) || oral(activity.skillsAlso);
}

} // namespace

void lintClaims(const Activity &activity, LintFindings &findings)
{
    for (const FamilyLine &line : everyLine(activity)) {
        lintLine(line, promises, "promises a result", "Say what to do or what to notice instead.",
                 findings);
        if (isMouthPlay(activity))
            lintLine(line, speechHints, "hints at speech", "Mouth and breath play is play only.",
                     findings);
    }
}

} // namespace lidlark::catalogue
