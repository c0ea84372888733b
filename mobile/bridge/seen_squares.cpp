#include "mobile/bridge/seen_squares.h"

#include <QImage>

#include "mobile/bridge/text.h"
#include "mobile/platform/qr/qr_reader.h"

namespace lidlark::mobile {

std::optional<SeenSquares> squaresIn(const QImage &picture)
{
    const auto read = readQr(picture);
    if (!read)
        return std::nullopt;
    const std::string text = toCore(*read);
    return SeenSquares{text, invitationIn(text)};
}

std::optional<sync::Invitation> invitationIn(const std::string &text)
{
    const auto read = sync::invitationFromQrText(text);
    const auto *invitation = std::get_if<sync::Invitation>(&read);
    return invitation != nullptr ? std::optional(*invitation) : std::nullopt;
}

} // namespace lidlark::mobile
