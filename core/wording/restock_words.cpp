#include "core/wording/restock_words.h"

#include "core/wording/print_words.h"

namespace lidlark::wording {

Sentence restockTitle()
{
    return {say("Restock round"), {}};
}

Sentence restockNote(Day day, int boxes)
{
    return {say("Boxes that wait: %1. As asked for up to %2."),
            {inDigits(boxes), fullDateWords(day)}};
}

Sentence nothingToRestock()
{
    return {say("Nobody waits for anything."), {}};
}

Sentence inPlaceOf(const Argument &name)
{
    return {say("in place of %1"), {name}};
}

} // namespace lidlark::wording
