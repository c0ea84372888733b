#include "core/wording/own_words.h"

#include <array>
#include <optional>

namespace lidlark::wording {

namespace {

struct Wanted {
    std::string_view field; ///< As the loader names it, without numbers of lines.
    English words;
};

/// What is asked for where it is missing, too much or too little.
constexpr std::array wantedWords{
    Wanted{"name", say("It needs a name, of at most 80 letters.")},
    Wanted{"invite", say("Say in at most twelve words what the child hears.")},
    Wanted{"adult_line", say("Say in at most 25 words what the adult does first.")},
    Wanted{"steps", say("It needs two to four steps.")},
    Wanted{"steps.text", say("Every step needs words.")},
    Wanted{"items", say("At most ten things are played with.")},
    Wanted{"makes", say("Say whether small pieces come of what is cut or torn.")},
    Wanted{"skills_main", say("Choose one or two things that it is for.")},
    Wanted{"skills_also", say("At most two more things that it is for, none of them twice.")},
    Wanted{"age_floor_months",
           say("Say from which age on. What it is played with sets the earliest.")},
    Wanted{"floor_reason", say("Say why not earlier.")},
    Wanted{"minutes.play", say("Play takes three to eight minutes.")},
    Wanted{"position", say("Choose how it is played: at least one way to sit, and nobody stands "
                           "with what is sharp or in a mouth.")},
    Wanted{"easier", say("Write at least one line that makes it easier.")},
    Wanted{"easier.text", say("Write at least one line that makes it easier.")},
    Wanted{"easier.lever", say("Each line changes something else.")},
    Wanted{"harder", say("Write at least one line that makes it harder.")},
    Wanted{"harder.text", say("Write at least one line that makes it harder.")},
    Wanted{"harder.lever", say("Each line changes something else.")},
    Wanted{"ways_in.one_hand", say("Write how it is played with one hand.")},
    Wanted{"cautions", say("A caution of what it is played with is missing.")},
    Wanted{"watch_for", say("Say in one or two lines what to watch for.")},
    Wanted{"stop_when", say("Say in one or two lines when to stop.")},
    Wanted{"say", say("Write one or two lines to say while playing.")},
    Wanted{"put_back", say("Write how everything comes home, in at most eight lines.")}};

/// "steps[2].text" -> "steps.text".
std::string bareField(std::string_view field)
{
    std::string bare;
    bool inside = false;
    for (const char letter : field) {
        inside = (inside || letter == '[') && letter != ']';
        if (!inside && letter != ']')
            bare += letter;
    }
    return bare;
}

std::optional<English> wantedOf(const std::string &field)
{
    for (const Wanted &wanted : wantedWords) {
        if (wanted.field == field)
            return wanted.words;
    }
    return std::nullopt;
}

/// It is there, and something in it has no place in an entry, or does not go with the rest.
bool isAboutContent(std::string_view reason)
{
    return reason.find("has no place") != std::string_view::npos ||
           reason.find("carries it") != std::string_view::npos ||
           reason.find("is longer than") != std::string_view::npos ||
           reason.find("a standard box holds") != std::string_view::npos;
}

} // namespace

Sentence ownFindingWords(const catalogue::Problem &problem)
{
    if (!isAboutContent(problem.reason)) {
        if (const auto words = wantedOf(bareField(problem.field)))
            return {*words, {}};
    }
    return {say("This cannot go to a box: %1."), {problem.reason}};
}

Sentence ownRuleWords(catalogue::LintRule rule)
{
    switch (rule) {
    case catalogue::LintRule::Reading:
        return {say("Shorter: sentences of at most 20 words, steps of at most 40, and words that a "
                    "ten-year-old reads."),
                {}};
    case catalogue::LintRule::Home:
        return {say("What goes out is counted home: write each number in a line, with the lid "
                    "last."),
                {}};
    case catalogue::LintRule::Floor:
        return {say("An adult sits right beside for what this is played with."), {}};
    case catalogue::LintRule::Gradings:
        return {say("Say in a few words what the adult changes, easier and harder each in its own "
                    "way."),
                {}};
    case catalogue::LintRule::Ways:
        return {say("Write it out: what the one hand does, and how it is played from a chair."),
                {}};
    case catalogue::LintRule::Claims:
        return {say("No line promises a result."), {}};
    case catalogue::LintRule::Talk:
        return {say("Say what you saw: no praise for obeying, and no exclamation mark."), {}};
    case catalogue::LintRule::Colour:
        return {say("No step needs a colour."), {}};
    case catalogue::LintRule::Drawings:
        return {say("Each step but one needs a drawing of its own."), {}};
    case catalogue::LintRule::OfItsOwn:
        return {say("The name, or a line, is one of ours already: say it another way."), {}};
    }
    return {};
}

Sentence writtenByWords(const std::string &writer)
{
    return {say("Written by %1, not yet checked by a clinician."), {writer}};
}

Sentence fromAgeWords(int months)
{
    if (months >= 24 && months % 12 == 0)
        return {say("From %1 years on"), {inWords(months / 12)}};
    if (months >= 24 && months % 12 == 6)
        return {say("From %1 and a half years on"), {inWords(months / 12)}};
    return {say("From %1 months on"), {inWords(months)}};
}

} // namespace lidlark::wording
