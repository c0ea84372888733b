#include "core/catalogue/lint_rules.h"
#include "core/catalogue/list_path.h"
#include "core/catalogue/phrase_search.h"
#include "core/catalogue/readability.h"

namespace lidlark::catalogue {

namespace {

constexpr int fewestWordsOfALine = 3;

void lintLines(const std::vector<Grading> &lines, std::string_view list, LintFindings &findings)
{
    for (std::size_t i = 0; i < lines.size(); ++i) {
        if (wordsIn(lines[i].text) < fewestWordsOfALine)
            findings.push_back({LintRule::Gradings, lineOf(list, i, "text"),
                                "\"" + lines[i].text + "\" does not say what to change",
                                "Say what the adult does with the " +
                                    std::string(leverNames.of(lines[i].lever)) + "."});
    }
}

} // namespace

void lintGradings(const Activity &activity, LintFindings &findings)
{
    // That there is one each way, with a lever, is the loader's business.
    lintLines(activity.easier, "easier", findings);
    lintLines(activity.harder, "harder", findings);
    for (std::size_t i = 0; i < activity.harder.size(); ++i) {
        for (const Grading &easier : activity.easier) {
            if (folded(easier.text) == folded(activity.harder[i].text))
                findings.push_back({LintRule::Gradings, lineOf("harder", i, "text"),
                                    "the same line makes it easier and harder",
                                    "Write what is different."});
        }
    }
}

} // namespace lidlark::catalogue
