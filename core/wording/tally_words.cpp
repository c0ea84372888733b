#include "core/wording/tally_words.h"

#include "core/wording/print_words.h"

namespace lidlark::wording {

Sentence tallyTitle()
{
    return {say("One week on paper"), {}};
}

Sentence tallyWeek(Day monday)
{
    return {say("Week from Monday, %1"), {fullDateWords(monday)}};
}

Sentence tallyListed()
{
    return {say("on the list"), {}};
}

Sentence tallyCounted()
{
    return {say("counted"), {}};
}

Sentence tallyNote()
{
    return {say("Write how many. An empty square says none. Count together at the end of the "
                "week."),
            {}};
}

Sentence tallyElse()
{
    return {say("Anything else about the box"), {}};
}

Sentence tallyVisit()
{
    return {say("Keep it in the box. We type it in at the next visit."), {}};
}

Sentence tallyLostLead()
{
    return {say("Something small is lost?"), {}};
}

} // namespace lidlark::wording
