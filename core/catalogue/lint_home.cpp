#include "core/catalogue/lint_rules.h"
#include "core/catalogue/list_path.h"
#include "core/catalogue/phrase_search.h"

#include <algorithm>
#include <array>

namespace lidlark::catalogue {

namespace {

constexpr std::array<std::string_view, 13> numberWords{"none", "one",    "two",   "three", "four",
                                                       "five", "six",    "seven", "eight", "nine",
                                                       "ten",  "eleven", "twelve"};

Fate fateOf(ComesBack comesBack)
{
    switch (comesBack) {
    case ComesBack::PartUsed:
        return Fate::PartUsed;
    case ComesBack::UsedUp:
        return Fate::UsedUp;
    default:
        return Fate::ComesBack;
    }
}

/// What is cut up is gone, however whole its kind comes home elsewhere.
bool isCutUp(const Activity &activity, const ItemId &item)
{
    return activity.makes &&
           std::any_of(activity.makes->begin(), activity.makes->end(),
                       [&item](const MadePiece &piece) { return piece.of == item; });
}

void lintFate(const Activity &activity, std::size_t index, const ItemKind &kind,
              LintFindings &findings)
{
    const ItemUse &use = activity.items[index];
    const Fate usual = fateOf(kind.comesBack);
    const bool cutUp = use.fate == Fate::UsedUp && isCutUp(activity, use.item);
    if (use.fate != usual && !cutUp)
        findings.push_back({LintRule::Home, lineOf("items", index, "fate"),
                            "\"" + std::string(fateNames.of(use.fate)) + "\", but the item's own " +
                                "file says \"" + std::string(fateNames.of(usual)) + "\"",
                            "Write the same, or change the item's file."});
    if (use.fate == Fate::ComesBack && use.countBack != use.quantity)
        findings.push_back({LintRule::Home, lineOf("items", index, "count_back"),
                            std::to_string(use.quantity) + " go out and " +
                                std::to_string(use.countBack) + " are counted home",
                            "Count all of them home."});
}

bool names(const std::vector<std::string> &lines, int number)
{
    return std::any_of(lines.begin(), lines.end(), [number](const std::string &line) {
        const std::string lower = folded(line);
        const auto place = static_cast<std::size_t>(number);
        return (place < numberWords.size() && hasPhrase(lower, numberWords[place])) ||
               hasPhrase(lower, std::to_string(number));
    });
}

void lintCount(const Activity &activity, const ItemUse &use, LintFindings &findings)
{
    const int home = use.source == Source::Box ? use.countBack : use.quantity;
    if (use.fate == Fate::UsedUp || home < 2 || names(activity.putBack, home))
        return;
    findings.push_back(
        {LintRule::Home, "put_back",
         "nothing is counted to " + std::to_string(home) + " (" + use.item.value + ")",
         "Say the number in the line that brings them home."});
}

} // namespace

void lintHome(const Activity &activity, const Catalogue &catalogue, LintFindings &findings)
{
    for (std::size_t i = 0; i < activity.items.size(); ++i) {
        const ItemUse &use = activity.items[i];
        const ItemKind *kind = catalogue.item(use.item);
        if (kind && use.source == Source::Box)
            lintFate(activity, i, *kind, findings);
        lintCount(activity, use, findings);
    }
    if (!activity.noBox && activity.putBack.back() != "Lid on")
        findings.push_back({LintRule::Home, "put_back", "the last line is not \"Lid on\"",
                            "End with \"Lid on\": the box is out."});
}

} // namespace lidlark::catalogue
