#include "core/wording/pack_list_words.h"

namespace lidlark::wording {

Sentence packListTitle()
{
    return {say("Pack list"), {}};
}

Sentence nobodysBox()
{
    return {say("Spare"), {}};
}

Sentence specialBox()
{
    return {say("Special: somebody else looks over each line."), {}};
}

Sentence tickedAlready()
{
    return {say("What has a tick here was in already."), {}};
}

Sentence inColumn()
{
    return {say("In, by whom"), {}};
}

Sentence secondLookColumn()
{
    return {say("Second look, by whom"), {}};
}

Sentence packedByLead()
{
    return {say("Packed by"), {}};
}

Sentence forHand(workbench::Hand hand)
{
    return {hand == workbench::Hand::Left ? say("for the left hand") : say("for the right hand"),
            {}};
}

Sentence takeOutAgain(const Argument &name)
{
    return {say("Take out again: %1."), {name}};
}

Sentence twoSquares()
{
    return {say("Where there are two squares, the second is for somebody else, who looks it over."),
            {}};
}

Sentence nothingToPack()
{
    return {say("No box of this build waits to be packed."), {}};
}

} // namespace lidlark::wording
