#pragma once

#include "core/sync/invitation.h"

#include <optional>
#include <string>

class QImage;

namespace lidlark::mobile {

/// A code of squares in a picture: somebody else's, or one of ours.
struct SeenSquares {
    std::string text;                           ///< What the squares say.
    std::optional<sync::Invitation> invitation; ///< Nothing: they are no joining code.
};

/// What a picture of a file or of a camera shows; it is not kept.
/// @returns nothing where no code of squares can be read in it.
std::optional<SeenSquares> squaresIn(const QImage &picture);

/// The joining code that squares said.
/// @returns nothing for any other text.
std::optional<sync::Invitation> invitationIn(const std::string &text);

} // namespace lidlark::mobile
