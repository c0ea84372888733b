#include "core/wording/print_words.h"

#include <array>
#include <utility>

namespace lidlark::wording {

namespace {

/// Other languages bend a month by its day: each date is whole.
constexpr std::array fullDates{say("%1 January %2"), say("%1 February %2"), say("%1 March %2"),
                               say("%1 April %2"),   say("%1 May %2"),      say("%1 June %2"),
                               say("%1 July %2"),    say("%1 August %2"),   say("%1 September %2"),
                               say("%1 October %2"), say("%1 November %2"), say("%1 December %2")};

/// "R2" is a code, the same in every language (job.md A6).
std::string revisionCode(int revision)
{
    return "R" + std::to_string(revision);
}

} // namespace

Sentence fullDateWords(Day day)
{
    const CivilDate date = civilFrom(day);
    return {fullDates[static_cast<std::size_t>(date.month - 1)],
            {inDigits(date.day), inDigits(date.year)}};
}

Sentence boxOf(const std::string &child)
{
    return {say("%1's box"), {child}};
}

Sentence lidListLine(int revision, Day issued)
{
    return {say("Lid list %1, from %2"), {revisionCode(revision), fullDateWords(issued)}};
}

Sentence boxCodeLine(const std::string &code)
{
    return {say("Box %1"), {code}};
}

Sentence inList(std::vector<Argument> names)
{
    Sentence list{say("%1"), {std::move(names.front())}};
    for (std::size_t i = 1; i < names.size(); ++i)
        list = {say("%1, %2"), {std::move(list), std::move(names[i])}};
    return list;
}

Sentence cardOf(int card, int cards)
{
    return {say("Card %1 of %2"), {inDigits(card), inDigits(cards)}};
}

Sentence countHomeLine()
{
    return {say("Count everything home. The lid comes last."), {}};
}

Sentence boxLabelTitle()
{
    return {say("Words that go with this box"), {}};
}

Sentence boxLabelNote()
{
    return {say("Keep them with the box, and hand them on with it."), {}};
}

Sentence keptOutLine(std::vector<Argument> names)
{
    return {say("Not in this home: %1."), {inList(std::move(names))}};
}

Sentence contactLead()
{
    return {say("Found it, or a question?"), {}};
}

Sentence travelTitle()
{
    return {say("Away from home"), {}};
}

Sentence travelNote()
{
    return {say("Nothing from the box is needed. Quiet ones come first."), {}};
}

Sentence travelMadeFor(const std::string &child, Day day)
{
    return {say("For %1, with everybody of this home in the room. Made on %2. Print it again when "
                "anything at home changes."),
            {child, fullDateWords(day)}};
}

Sentence aboutMinutes(int minutes)
{
    return {say("about %1 min"), {inDigits(minutes)}};
}

Sentence nothingToTravelWith()
{
    return {say("Nothing stands on this list now. Everything, in the app, says why."), {}};
}

Sentence olderLids(int revision, Day issued)
{
    return {say("%1 is in force since %2. A lid that says less is out of date: print it again."),
            {revisionCode(revision), fullDateWords(issued)}};
}

} // namespace lidlark::wording
