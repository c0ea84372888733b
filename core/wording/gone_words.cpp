#include "core/wording/gone_words.h"

#include <array>

namespace lidlark::wording {

namespace {

/// In the order of box::ExceptionKind; the last is for what has no single word.
constexpr std::array<English, box::exceptionKindCount + 1> ofAnItem{
    say("%1 %2 used up"),   say("%1 %2 lost"),         say("%1 %2 broken"),
    say("%1 %2 dried out"), say("%1 %2 still in use"), say("%1 %2 gone")};

constexpr std::array<English, box::exceptionKindCount + 1> ofPieces{
    say("%1 used up"),   say("%1 lost"),         say("%1 broken"),
    say("%1 dried out"), say("%1 still in use"), say("%1 gone")};

std::size_t placeOf(std::optional<box::ExceptionKind> kind)
{
    return kind ? static_cast<std::size_t>(*kind) : box::exceptionKindCount;
}

} // namespace

const std::string &nameFor(int pieces, const PieceNames &item)
{
    return pieces == 1 ? item.one : item.many;
}

Sentence piecesGone(int pieces, const PieceNames &item, std::optional<box::ExceptionKind> kind)
{
    return {ofAnItem[placeOf(kind)], {inWords(pieces), nameFor(pieces, item)}};
}

Sentence numberGone(int pieces, std::optional<box::ExceptionKind> kind)
{
    return {ofPieces[placeOf(kind)], {inWords(pieces)}};
}

Sentence piecesOf(int pieces, const PieceNames &item)
{
    return {say("%1 %2"), {inWords(pieces), nameFor(pieces, item)}};
}

} // namespace lidlark::wording
