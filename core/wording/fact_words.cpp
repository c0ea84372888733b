#include "core/wording/fact_words.h"

#include <array>
#include <span>
#include <string_view>
#include <utility>
#include <vector>

namespace lidlark::wording {

namespace {

/// A fact with what is said of it: of the home, then of a person.
struct FactLine {
    std::string_view fact;
    English yes;
    English no;
};

constexpr std::array homeLines{
    FactLine{"latex", say("Home sheet: latex must stay away"), say("Home sheet: latex may stay")},
    FactLine{"latex-risk", say("Home sheet: latex is a risk here"),
             say("Home sheet: latex is no risk here")},
    FactLine{"wheat", say("Home sheet: a wheat allergy here"),
             say("Home sheet: no wheat allergy here")},
    FactLine{"coeliac", say("Home sheet: coeliac disease here"),
             say("Home sheet: no coeliac disease here")},
    FactLine{"likes-touch", say("Home sheet: likes firm touch"),
             say("Home sheet: does not like firm touch")},
    FactLine{"pets", say("Home sheet: a dog or a cat here"),
             say("Home sheet: no dog and no cat here")},
    FactLine{"high-storage", say("Home sheet: a high place for the box"),
             say("Home sheet: no high place for the box")}};

constexpr std::array personLines{
    FactLine{"mouths", say("Home sheet: %1 puts things in the mouth"),
             say("Home sheet: %1 puts nothing in the mouth")},
    FactLine{"pica", say("Home sheet: %1 eats what is no food"),
             say("Home sheet: %1 eats food only")},
    FactLine{"lives", say("Home sheet: %1 lives here"), say("Home sheet: %1 does not live here")},
    FactLine{"energy-limited", say("Home sheet: %1 tires fast"),
             say("Home sheet: %1 does not tire fast")}};

} // namespace

Sentence factSaid(const child::Fact &fact, const std::string &person)
{
    const bool ofHome = person.empty();
    for (const FactLine &line :
         ofHome ? std::span<const FactLine>(homeLines) : std::span<const FactLine>(personLines)) {
        if (line.fact != fact.fact || (fact.value != "yes" && fact.value != "no"))
            continue;
        std::vector<Argument> who;
        if (!ofHome)
            who.emplace_back(person);
        return {fact.value == "yes" ? line.yes : line.no, std::move(who)};
    }
    if (fact.fact == "emergency-number")
        return {say("Home sheet: emergency number"), {}};
    if (fact.fact == "poison-line")
        return {say("Home sheet: poison line"), {}};
    if (ofHome)
        return {say("Home sheet: something said of the home"), {}};
    return {say("Home sheet: something said of %1"), {person}};
}

} // namespace lidlark::wording
