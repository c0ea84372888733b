#pragma once

#include "core/box/exceptions.h"
#include "core/wording/sentence.h"

#include <optional>
#include <string>

namespace lidlark::wording {

/// An item as the catalogue names it: "stick-on eye", "stick-on eyes".
struct PieceNames {
    std::string one;
    std::string many;
};

/// "stick-on eye" for one, "stick-on eyes" for any other number.
const std::string &nameFor(int pieces, const PieceNames &item);

/// What became of pieces: "two stick-on eyes used up". Without a kind: "two stick-on eyes gone".
Sentence piecesGone(int pieces, const PieceNames &item, std::optional<box::ExceptionKind> kind);

/// The same where it is known what is spoken of: "two used up".
Sentence numberGone(int pieces, std::optional<box::ExceptionKind> kind);

/// "two stick-on eyes".
Sentence piecesOf(int pieces, const PieceNames &item);

} // namespace lidlark::wording
