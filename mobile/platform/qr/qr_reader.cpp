#include "mobile/platform/qr/qr_reader.h"

#include <QtCore/QString>
#include <QtGui/QImage>

#include <ZXing/ReadBarcode.h>

#include <algorithm>
#include <exception>

namespace lidlark::mobile {

namespace {

/// A larger picture is read no better, and one of a hundred megapixels would hold up the phone.
constexpr int longestSide = 1600;

QImage inGrey(const QImage &picture)
{
    const bool large = std::max(picture.width(), picture.height()) > longestSide;
    const QImage size = large ? picture.scaled(longestSide, longestSide, Qt::KeepAspectRatio,
                                               Qt::SmoothTransformation)
                              : picture;
    return size.convertToFormat(QImage::Format_Grayscale8);
}

} // namespace

std::optional<QString> readQr(const QImage &picture)
{
    if (picture.isNull())
        return std::nullopt;
    const QImage grey = inGrey(picture);
    if (grey.isNull()) // no room for it
        return std::nullopt;
    const ZXing::ImageView view(grey.constBits(), grey.width(), grey.height(),
                                ZXing::ImageFormat::Lum, static_cast<int>(grey.bytesPerLine()));
    ZXing::DecodeHints hints;
    hints.setFormats(ZXing::BarcodeFormat::QRCode);
    try {
        const ZXing::Result result = ZXing::ReadBarcode(view, hints);
        if (result.isValid())
            return QString::fromStdString(result.text());
    } catch (const std::exception &) { // hostile squares: as good as none
    }
    return std::nullopt;
}

} // namespace lidlark::mobile
