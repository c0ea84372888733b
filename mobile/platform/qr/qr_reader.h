#pragma once

#include <optional>

class QImage;
class QString;

namespace lidlark::mobile {

/// The text of the QR code in a picture, as a camera or a file gives it: turned, slanted, in uneven
/// light. Other kinds of codes are not looked for.
/// @returns nothing where there is none, or it cannot be read. What is read comes from anybody:
/// whoever takes it judges it.
std::optional<QString> readQr(const QImage &picture);

} // namespace lidlark::mobile
