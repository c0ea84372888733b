#include "tests/pictures/likeness.h"

#include <QPainter>

#include <algorithm>
#include <cstdlib>

namespace lidlark::pictures {

namespace {

bool differs(QRgb one, QRgb other)
{
    return std::max({std::abs(qRed(one) - qRed(other)), std::abs(qGreen(one) - qGreen(other)),
                     std::abs(qBlue(one) - qBlue(other))}) > Likeness::leastStep;
}

/// The nearest of 32 levels, of which the first is 0 and the last 255.
int nearest(int channel)
{
    const int level = (channel * 31 + 127) / 255;
    return (level * 255 + 15) / 31;
}

} // namespace

bool Likeness::isAlike() const
{
    return sameSize && differing <= mostDots;
}

QImage rounded(const QImage &picture)
{
    QImage coarse = picture.convertToFormat(QImage::Format_RGB32);
    for (int y = 0; y < coarse.height(); ++y) {
        for (int x = 0; x < coarse.width(); ++x) {
            const QRgb dot = coarse.pixel(x, y);
            coarse.setPixel(x, y,
                            qRgb(nearest(qRed(dot)), nearest(qGreen(dot)), nearest(qBlue(dot))));
        }
    }
    return coarse;
}

Likeness compare(const QImage &reference, const QImage &now)
{
    Likeness likeness;
    likeness.sameSize = reference.size() == now.size();
    if (!likeness.sameSize)
        return likeness;
    for (int y = 0; y < now.height(); ++y) {
        for (int x = 0; x < now.width(); ++x)
            likeness.differing += differs(reference.pixel(x, y), now.pixel(x, y)) ? 1 : 0;
    }
    return likeness;
}

QImage sideBySide(const QImage &reference, const QImage &now)
{
    constexpr int gap = 8;
    QImage difference(now.size(), QImage::Format_RGB32);
    difference.fill(Qt::white);
    for (int y = 0; y < now.height(); ++y) {
        for (int x = 0; x < now.width(); ++x) {
            const bool beyond = !reference.rect().contains(x, y);
            if (beyond || differs(reference.pixel(x, y), now.pixel(x, y)))
                difference.setPixel(x, y, qRgb(0, 0, 0));
        }
    }
    QImage all(reference.width() + 2 * (now.width() + gap),
               std::max(reference.height(), now.height()), QImage::Format_RGB32);
    all.fill(Qt::darkGray);
    QPainter painter(&all);
    painter.drawImage(0, 0, reference);
    painter.drawImage(reference.width() + gap, 0, now);
    painter.drawImage(reference.width() + now.width() + 2 * gap, 0, difference);
    return all;
}

} // namespace lidlark::pictures
