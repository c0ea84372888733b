#include "frame_light.h"

#include <optional>

namespace lidlark::mobile {

namespace {

/// Where the light of a frame lies in its first plane.
struct LightAt {
    int first = 0; ///< Bytes before the first dot of a line.
    int step = 1;  ///< Bytes from one dot to the next.
};

/// Source: Qt 6.4, QVideoFrameFormat::PixelFormat. Nothing: the light has no bytes of its own.
std::optional<LightAt> lightIn(QVideoFrameFormat::PixelFormat format)
{
    switch (format) {
    case QVideoFrameFormat::Format_YUV420P:
    case QVideoFrameFormat::Format_YUV422P:
    case QVideoFrameFormat::Format_YV12:
    case QVideoFrameFormat::Format_NV12:
    case QVideoFrameFormat::Format_NV21:
    case QVideoFrameFormat::Format_IMC1:
    case QVideoFrameFormat::Format_IMC2:
    case QVideoFrameFormat::Format_IMC3:
    case QVideoFrameFormat::Format_IMC4:
    case QVideoFrameFormat::Format_Y8:
        return LightAt{0, 1};
    case QVideoFrameFormat::Format_YUYV:
        return LightAt{0, 2};
    case QVideoFrameFormat::Format_UYVY:
        return LightAt{1, 2};
    default:
        return std::nullopt;
    }
}

QImage lightOf(const QVideoFrame &mapped, const LightAt &at)
{
    const int width = mapped.width();
    const int needed = at.first + at.step * (width - 1) + 1;
    const qsizetype size = static_cast<qsizetype>(mapped.bytesPerLine(0)) * mapped.height();
    if (mapped.bytesPerLine(0) < needed || size > mapped.mappedBytes(0))
        return {};
    QImage grey(mapped.size(), QImage::Format_Grayscale8);
    for (int y = 0; y < grey.height(); ++y) {
        const uchar *from = mapped.bits(0) + qsizetype{y} * mapped.bytesPerLine(0) + at.first;
        uchar *to = grey.scanLine(y);
        for (int x = 0; x < width; ++x)
            to[x] = from[qsizetype{x} * at.step];
    }
    return grey;
}

/// In colours that QImage knows as well.
QImage coloursOf(const QVideoFrame &mapped, QImage::Format format)
{
    return QImage(mapped.bits(0), mapped.width(), mapped.height(), mapped.bytesPerLine(0), format)
        .copy();
}

} // namespace

QImage pictureOf(QVideoFrame frame)
{
    const auto light = lightIn(frame.pixelFormat());
    const auto format = QVideoFrameFormat::imageFormatFromPixelFormat(frame.pixelFormat());
    if (!light && format == QImage::Format_Invalid)
        return frame.toImage();
    if (!frame.map(QVideoFrame::ReadOnly))
        return {};
    QImage picture = light ? lightOf(frame, *light) : coloursOf(frame, format);
    frame.unmap();
    return picture;
}

} // namespace lidlark::mobile
