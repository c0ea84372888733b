#include "core/wording/fact_words.h"

#include <array>
#include <span>
#include <string_view>
#include <vector>

namespace lidlark::wording {

namespace {

/// A fact with what is said of it: of the home, then of a person.
struct FactLine {
    std::string_view fact;
    const char *yes;
    const char *no;
};

constexpr std::array homeLines{
    FactLine{"latex", "Home sheet: latex must stay away", "Home sheet: latex may stay"},
    FactLine{"latex-risk", "Home sheet: latex is a risk here", "Home sheet: latex is no risk here"},
    FactLine{"wheat", "Home sheet: a wheat allergy here", "Home sheet: no wheat allergy here"},
    FactLine{"coeliac", "Home sheet: coeliac disease here", "Home sheet: no coeliac disease here"},
    FactLine{"likes-touch", "Home sheet: likes firm touch", "Home sheet: does not like firm touch"},
    FactLine{"pets", "Home sheet: a dog or a cat here", "Home sheet: no dog and no cat here"},
    FactLine{"high-storage", "Home sheet: a high place for the box",
             "Home sheet: no high place for the box"}};

constexpr std::array personLines{
    FactLine{"mouths", "Home sheet: %1 puts things in the mouth",
             "Home sheet: %1 puts nothing in the mouth"},
    FactLine{"pica", "Home sheet: %1 eats what is no food", "Home sheet: %1 eats food only"},
    FactLine{"lives", "Home sheet: %1 lives here", "Home sheet: %1 does not live here"},
    FactLine{"energy-limited", "Home sheet: %1 tires fast", "Home sheet: %1 does not tire fast"}};

} // namespace

Sentence factSaid(const child::Fact &fact, const std::string &person)
{
    const bool ofHome = person.empty();
    for (const FactLine &line :
         ofHome ? std::span<const FactLine>(homeLines) : std::span<const FactLine>(personLines)) {
        if (line.fact != fact.fact || (fact.value != "yes" && fact.value != "no"))
            continue;
        const std::vector<std::string> who =
            ofHome ? std::vector<std::string>() : std::vector{person};
        return {fact.value == "yes" ? line.yes : line.no, who};
    }
    if (fact.fact == "emergency-number")
        return {"Home sheet: emergency number", {}};
    if (fact.fact == "poison-line")
        return {"Home sheet: poison line", {}};
    if (ofHome)
        return {"Home sheet: something said of the home", {}};
    return {"Home sheet: something said of %1", {person}};
}

} // namespace lidlark::wording
