#include "core/wording/floor_words.h"

namespace lidlark::wording {

Sentence piecesMissing(int pieces, const std::string &one, const std::string &name)
{
    if (pieces == 1)
        return {"One %1 is missing.", {one}};
    return {"%1 %2 are missing.", {capital(numberWord(pieces)), name}};
}

Sentence smallPiecesMissing(int pieces)
{
    return {"%1 small pieces are missing.", {capital(numberWord(pieces))}};
}

Sentence balloonPiecesMissing(int balloons)
{
    if (balloons == 1)
        return {"Pieces of a balloon are missing.", {}};
    return {"Pieces of %1 balloons are missing.", {numberWord(balloons)}};
}

Sentence lookAtHandsFirst()
{
    return {"First look at each child's hands and mouth.", {}};
}

Sentence lookNow(bool balloon)
{
    if (balloon)
        return {"Look now: table, floor, clothes, under the chairs.", {}};
    return {"Look now: table, floor, clothes, dough.", {}};
}

Sentence keepAway(const std::vector<std::string> &aliases)
{
    switch (aliases.size()) {
    case 0:
        return {"Keep small children away until found.", {}};
    case 1:
        return {"Keep %1 away until found.", aliases};
    case 2:
        return {"Keep %1 and %2 away until found.", aliases};
    default:
        break;
    }
    return {"Keep %1, %2 and all other small children away until found.", {aliases[0], aliases[1]}};
}

} // namespace lidlark::wording
