#include "core/catalogue/lint_rules.h"
#include "core/catalogue/list_path.h"
#include "core/catalogue/phrase_search.h"

#include <array>

namespace lidlark::catalogue {

namespace {

/// Hues. Dark, pale, black and white stay apart in grey, so they may be named.
constexpr std::array<std::string_view, 13> hues{"red",    "green",     "blue",   "yellow", "orange",
                                                "purple", "pink",      "brown",  "violet", "gold",
                                                "silver", "turquoise", "colour*"};

} // namespace

void lintColour(const Activity &activity, LintFindings &findings)
{
    for (std::size_t i = 0; i < activity.steps.size(); ++i) {
        const std::string lower = folded(activity.steps[i].text);
        for (const std::string_view hue : hues) {
            if (hasPhrase(lower, hue))
                findings.push_back({LintRule::Colour, lineOf("steps", i, "text"),
                                    "\"" + std::string(hue.substr(0, hue.find('*'))) +
                                        "\" leaves out who does not see colours apart",
                                    "Name shape, size, place or a mark."});
        }
    }
}

} // namespace lidlark::catalogue
