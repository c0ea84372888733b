#include "core/catalogue/lint_rules.h"
#include "core/catalogue/phrase_search.h"

#include <array>

namespace lidlark::catalogue {

namespace {

/// Praise for obeying, and orders dressed as requests. Source: activities.md 1.1, `say`:
/// "describes effort and discovery, no praise for compliance". The list itself is our own.
constexpr std::array<std::string_view, 22> praise{
    "good boy",         "good girl", "good job", "great job", "good work",      "nice work",
    "well done",        "clever",    "smart",    "brilliant", "excellent",      "perfect",
    "fantastic",        "amazing",   "bravo",    "proud",     "good listening", "as i asked",
    "as you were told", "please",    "good try", "best"};

} // namespace

void lintTalk(const Activity &activity, LintFindings &findings)
{
    for (const FamilyLine &line : everyLine(activity)) {
        if (line.text.find('!') != std::string_view::npos)
            findings.push_back({LintRule::Talk, line.field, "an exclamation mark",
                                "End with a full stop: nothing here shouts."});
        if (!line.field.starts_with("say["))
            continue;
        const std::string lower = folded(line.text);
        for (const std::string_view phrase : praise) {
            if (hasPhrase(lower, phrase))
                findings.push_back({LintRule::Talk, line.field,
                                    "\"" + std::string(phrase) + "\" judges the child",
                                    "Say what you saw, or wonder what comes next."});
        }
    }
}

} // namespace lidlark::catalogue
