#pragma once

#include <QtGui/QImage>

class QString;

namespace lidlark::mobile {

/// Modules of white around a code, on every side. Source: Denso Wave, "QR Code Introduction: QR
/// Code Area" (denso-wave.com/qrcode/qrgene4-e.html), of ISO/IEC 18004.
inline constexpr int quietModules = 4;
/// Pixels of a module at most.
inline constexpr int mostModulePixels = 32;

/// @p text as a QR code of correction level M (it can be read with 15 % of it lost: Denso Wave,
/// "Symbol Version"), black on white whatever the scheme of the app: many readers know no other.
/// Its quiet zone is part of it.
/// @param text printable ASCII, which every reader takes for the same; a URI is.
/// @param modulePixels 1 to mostModulePixels.
/// @returns a null picture where the text is empty, holds anything else, or is longer than a code
/// can hold (2331 characters; more where there are many digits), and where the pixels are out of
/// range.
QImage qrPicture(const QString &text, int modulePixels);

} // namespace lidlark::mobile
