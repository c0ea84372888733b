#include "core/wording/summary_words.h"

#include "core/catalogue/translation.h"
#include "core/wording/catalogue_terms.h"
#include "core/wording/line_words.h"
#include "core/wording/play_words.h"
#include "core/wording/print_words.h"

#include <utility>

namespace lidlark::wording {

Sentence summaryTitle(const std::string &child)
{
    return {say("%1: how things stand"), {child}};
}

Sentence summaryTime(Day since, Day day)
{
    return {say("%1 to %2"), {fullDateWords(since), fullDateWords(day)}};
}

Sentence summaryPlayed()
{
    return {say("What was played, and what adults noticed"), {}};
}

Sentence summaryGoals()
{
    return {say("Goals, in the family's words"), {}};
}

Sentence summaryBox()
{
    return {say("The box"), {}};
}

Sentence summaryUnknown()
{
    return {say("What we do not know"), {}};
}

Sentence playedWords(const catalogue::Activity *activity, const ActivityId &id,
                     std::span<const play::Phrase> noticed)
{
    std::vector<Argument> said{activity != nullptr ? termOf(*activity, activity->name,
                                                            catalogue::inEnglish(*activity).name)
                                                   : Argument(id.value)};
    for (const play::Phrase phrase : noticed)
        said.emplace_back(phraseWords(phrase));
    return asSentence(std::move(said));
}

Sentence playsNotTold()
{
    return {say("Not told here. It is the family's own."), {}};
}

Sentence nothingWritten()
{
    return {say("Nothing is written down."), {}};
}

Sentence andOthers()
{
    return {say("And others."), {}};
}

Sentence levelNow()
{
    return {say("now"), {}};
}

Sentence goalDates(Day agreed, Day review)
{
    return {say("Agreed on %1. Looked at again on %2."),
            {fullDateWords(agreed), fullDateWords(review)}};
}

Sentence noGoals()
{
    return {say("None is agreed yet."), {}};
}

Sentence boxComplete()
{
    return {say("Complete, by what was noted."), {}};
}

Sentence boxLow(std::vector<Argument> names)
{
    return {say("Running low: %1."), {inList(std::move(names))}};
}

Sentence boxNone(std::vector<Argument> names)
{
    return {say("None left: %1."), {inList(std::move(names))}};
}

Sentence boxAsked(std::vector<Argument> names)
{
    return {say("Asked for: %1."), {inList(std::move(names))}};
}

Sentence boxOpen(std::vector<Argument> names)
{
    return {say("Not sure how many: %1."), {inList(std::move(names))}};
}

Sentence boxPieceMissing()
{
    return {say("Something small is still being looked for."), {}};
}

Sentence boxCounted(std::optional<Day> day)
{
    if (!day)
        return {say("Not everything in it has been counted yet."), {}};
    return {say("Everything in it was counted on %1 or later."), {fullDateWords(*day)}};
}

std::vector<Sentence> whatNobodyKnows(const std::string &child, bool playsTold)
{
    std::vector<Sentence> unknown;
    if (playsTold)
        unknown.push_back({say("What was played and not written down."), {}});
    else
        unknown.push_back({say("What was played, and what came of it."), {}});
    unknown.push_back(
        {say("How it felt to %1. What %1 shows with the kite stays at home."), {child}});
    unknown.push_back(
        {say("Why a goal has moved or not: growing, school and play all count."), {}});
    unknown.push_back({say("What is in the box today, beyond what was noted."), {}});
    return unknown;
}

Sentence nothingGraded()
{
    return {say("Nothing on this page grades anybody."), {}};
}

Sentence toldWith(const std::string &person, Day day)
{
    return {say("What was played is told with the yes of %1, %2."), {person, fullDateWords(day)}};
}

Sentence toldAsShared()
{
    return {say("What was played is told as far as the family shares it."), {}};
}

} // namespace lidlark::wording
