#include "mobile/platform/qr/qr_picture.h"

#include <QtCore/QString>

#include <qrencode.h>

#include <algorithm>
#include <memory>

namespace lidlark::mobile {

namespace {

bool isPrintableAscii(const QString &text)
{
    return std::all_of(text.begin(), text.end(),
                       [](QChar c) { return c.unicode() >= 0x20 && c.unicode() < 0x7F; });
}

} // namespace

QImage qrPicture(const QString &text, int modulePixels)
{
    if (text.isEmpty() || !isPrintableAscii(text) || modulePixels < 1 ||
        modulePixels > mostModulePixels)
        return {};
    constexpr int anyVersion = 0;
    constexpr int caseSensitive = 1;
    const std::unique_ptr<QRcode, void (*)(QRcode *)> code(
        QRcode_encodeString(text.toLatin1().constData(), anyVersion, QR_ECLEVEL_M, QR_MODE_8,
                            caseSensitive),
        &QRcode_free);
    if (code == nullptr)
        return {};
    const int side = code->width + 2 * quietModules;
    QImage modules(side, side, QImage::Format_Grayscale8);
    modules.fill(Qt::white);
    for (int y = 0; y < code->width; ++y) {
        uchar *line = modules.scanLine(y + quietModules) + quietModules;
        for (int x = 0; x < code->width; ++x) {
            if ((code->data[y * code->width + x] & 1U) != 0)
                line[x] = 0;
        }
    }
    return modules.scaled(side * modulePixels, side * modulePixels);
}

} // namespace lidlark::mobile
