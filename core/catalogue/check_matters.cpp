#include "core/catalogue/check_matters.h"

#include "core/catalogue/list_path.h"
#include "core/catalogue/phrase_search.h"

#include <array>

namespace lidlark::catalogue {

namespace {

constexpr std::array banned{"magnet*",   "batter*",      "water bead*",    "glitter*",
                            "hot glue*", "helium*",      "essential oil*", "cling film*",
                            "bin bag*",  "launch*",      "catapult*",      "slingshot*",
                            "cot",       "pram",         "cradle*",        "popcorn*",
                            "peanut*",   "marshmallow*", "grape*",         "hold your breath*"};

/// A warning against a thing may name it: a coin is looked at, lest it is one of these.
constexpr std::array warnings{"no button battery", "not a button battery"};

std::string withoutWarnings(std::string text)
{
    for (const std::string_view warning : warnings) {
        for (auto at = text.find(warning); at != std::string::npos; at = text.find(warning))
            text.erase(at, warning.size());
    }
    return text;
}

void checkText(const std::string &field, std::string_view text, Findings &findings)
{
    const std::string lower = withoutWarnings(folded(text));
    for (const std::string_view phrase : banned) {
        if (hasPhrase(lower, phrase))
            findings.addAt(field, "\"" + shown(phrase) + "\" has no place in an entry");
    }
}

} // namespace

void checkMatters(const Activity &activity, Findings &findings)
{
    checkText("name", activity.name, findings);
    checkText("invite", activity.invite, findings);
    checkText("adult_line", activity.adultLine, findings);
    for (std::size_t i = 0; i < activity.steps.size(); ++i)
        checkText(lineOf("steps", i, "text"), activity.steps[i].text, findings);
    for (std::size_t i = 0; i < activity.easier.size(); ++i)
        checkText(lineOf("easier", i, "text"), activity.easier[i].text, findings);
    for (std::size_t i = 0; i < activity.harder.size(); ++i)
        checkText(lineOf("harder", i, "text"), activity.harder[i].text, findings);
    for (std::size_t i = 0; i < activity.swaps.size(); ++i)
        checkText(lineOf("swaps", i, "text"), activity.swaps[i].text, findings);
}

} // namespace lidlark::catalogue
