#include "core/catalogue/check_matters.h"

#include "core/catalogue/list_path.h"

#include <algorithm>
#include <array>
#include <cctype>

namespace lidlark::catalogue {

namespace {

/// Lower case. Long ones are beginnings of words ("batter": battery, batteries); those of up to
/// four letters are whole words.
constexpr std::array banned{"magnet",   "batter",      "water bead",    "glitter",
                            "hot glue", "helium",      "essential oil", "cling film",
                            "bin bag",  "launch",      "catapult",      "slingshot",
                            "cot",      "pram",        "cradle",        "popcorn",
                            "peanut",   "marshmallow", "grape",         "hold your breath"};

/// "cot" is neither in "scotch" nor in "cotton".
bool isWordAt(const std::string &text, std::size_t at, std::string_view word)
{
    const auto letter = [&text](std::size_t place) {
        return place < text.size() && std::isalpha(static_cast<unsigned char>(text[place])) != 0;
    };
    if (at > 0 && letter(at - 1))
        return false;
    const std::size_t end = at + word.size();
    constexpr std::size_t longestWholeWord = 4;
    return word.size() > longestWholeWord || !letter(end) || (text[end] == 's' && !letter(end + 1));
}

bool names(const std::string &text, std::string_view word)
{
    for (std::size_t at = text.find(word); at != std::string::npos; at = text.find(word, at + 1)) {
        if (isWordAt(text, at, word))
            return true;
    }
    return false;
}

void checkText(const std::string &field, std::string text, Findings &findings)
{
    std::transform(text.begin(), text.end(), text.begin(),
                   [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    for (const std::string_view word : banned) {
        if (names(text, word))
            findings.addAt(field, "\"" + std::string(word) + "\" has no place in an entry");
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
