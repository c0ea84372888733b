#include "core/wording/floor_words.h"

namespace lidlark::wording {

Sentence piecesMissing(int pieces, const Argument &one, const Argument &name)
{
    if (pieces == 1)
        return {say("One %1 is missing."), {one}};
    return {say("%1 %2 are missing."), {withCapital(inWords(pieces)), name}};
}

Sentence smallPiecesMissing(int pieces)
{
    return {sayCounted("%1 small pieces are missing."), {withCapital(inWords(pieces))}};
}

Sentence missingWords(int pieces)
{
    return {sayCounted("%1 missing"), {withCapital(inWords(pieces))}};
}

Sentence balloonPiecesMissing(int balloons)
{
    if (balloons == 1)
        return {say("Pieces of a balloon are missing."), {}};
    return {sayCounted("Pieces of %1 balloons are missing."), {inWords(balloons)}};
}

Sentence lookAtHandsFirst()
{
    return {say("First look at each child's hands and mouth."), {}};
}

Sentence lookNow(bool balloon)
{
    if (balloon)
        return {say("Look now: table, floor, clothes, under the chairs."), {}};
    return {say("Look now: table, floor, clothes, dough."), {}};
}

Sentence keepAway(const std::vector<std::string> &aliases)
{
    switch (aliases.size()) {
    case 0:
        return {say("Keep small children away until found."), {}};
    case 1:
        return {say("Keep %1 away until found."), {aliases[0]}};
    case 2:
        return {say("Keep %1 and %2 away until found."), {aliases[0], aliases[1]}};
    default:
        break;
    }
    return {say("Keep %1, %2 and all other small children away until found."),
            {aliases[0], aliases[1]}};
}

} // namespace lidlark::wording
