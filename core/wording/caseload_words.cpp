#include "core/wording/caseload_words.h"

#include "core/wording/day_words.h"

#include <array>

namespace lidlark::wording {

Sentence boxMatter(BoxMatter matter)
{
    // In the order of BoxMatter.
    static constexpr std::array words{say("Safety note"), say("Awaiting confirmation"),
                                      say("Needs stock"), say("Review due")};
    return {words[static_cast<std::size_t>(matter)], {}};
}

Sentence revisionSent(int number, Day sent)
{
    return {say("Revision %1, sent %2."), {inDigits(number), dateWords(sent)}};
}

Sentence revisionReceived(const std::string &person, Day received)
{
    return {say("Received by %1, %2."), {person, dateWords(received)}};
}

Sentence notReceived()
{
    return {say("Nobody has received it yet."), {}};
}

Sentence twoLists()
{
    return {say("Two lists were written without knowing of each other. Send one more that says "
                "what holds."),
            {}};
}

Sentence stillToTakeOut(const std::string &names)
{
    return {say("Still to be taken out: %1."), {names}};
}

Sentence allTakenOut()
{
    return {say("All of it is taken out."), {}};
}

Sentence onTheWay(const std::string &names)
{
    return {say("On the way: %1."), {names}};
}

Sentence askedFor(const std::string &names)
{
    return {say("Asked for: %1."), {names}};
}

Sentence runningLow(const std::string &names)
{
    return {say("Running low: %1."), {names}};
}

Sentence mustStayAway(child::Avoided what, const std::string &author, Day day)
{
    const English words = what == child::Avoided::Latex ? say("Latex must stay away, says %1, %2.")
                                                        : say("Wheat must stay away, says %1, %2.");
    return {words, {author, dateWords(day)}};
}

Sentence piecesNotFound(int pieces)
{
    if (pieces == 1)
        return {say("One small piece is not found."), {}};
    return {sayCounted("%1 small pieces are not found."), {withCapital(inWords(pieces))}};
}

Sentence goalReview(Day day)
{
    return {say("Goal review: %1."), {dateWords(day)}};
}

Sentence whyChanged(const std::string &author, const std::string &why)
{
    if (author.empty())
        return {say("Why: %1"), {why}};
    return {say("%1 wrote why: %2"), {author, why}};
}

Sentence lidOutOfDate(int number, Day since)
{
    return {say("The list on the lid is out of date: revision %1 holds since %2."),
            {inDigits(number), dateWords(since)}};
}

Sentence newListSent(int number)
{
    return {say("The box has a new lid list: revision %1."), {inDigits(number)}};
}

Sentence takeOutOfBox()
{
    return {
        say("Take these out of the box now. Keep them where no child can reach them, until they "
            "are handed back."),
        {}};
}

std::vector<Sentence> coachingLines()
{
    return {
        {say("The parent opens the box and finds each thing on the lid list."), {}},
        {say("The parent fills in the home sheet: who lives there, ages, allergies."), {}},
        {say("The parent chooses one activity and reads its caution aloud."), {}},
        {say("The parent plays it with the child. You watch, and your hands stay still."), {}},
        {say("The parent makes it easier once and harder once."), {}},
        {say("The parent counts everything back in, closes the lid and says where the box lives."),
         {}}};
}

} // namespace lidlark::wording
