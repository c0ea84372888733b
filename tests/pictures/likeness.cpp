#include "tests/pictures/likeness.h"

#include <QPainter>
#include <QSet>

#include <algorithm>
#include <cstdlib>

namespace lidlark::pictures {

namespace {

constexpr int mostColours = 256;

bool differs(QRgb one, QRgb other)
{
    return std::max({std::abs(qRed(one) - qRed(other)), std::abs(qGreen(one) - qGreen(other)),
                     std::abs(qBlue(one) - qBlue(other))}) > Likeness::leastStep;
}

QRgb meanOfFour(const QImage &picture, int x, int y)
{
    const QRgb dots[] = {picture.pixel(x, y), picture.pixel(x + 1, y), picture.pixel(x, y + 1),
                         picture.pixel(x + 1, y + 1)};
    int red = 0;
    int green = 0;
    int blue = 0;
    for (const QRgb dot : dots) {
        red += qRed(dot);
        green += qGreen(dot);
        blue += qBlue(dot);
    }
    return qRgb(red / 4, green / 4, blue / 4);
}

QImage halved(const QImage &picture)
{
    QImage half(picture.width() / 2, picture.height() / 2, QImage::Format_RGB32);
    for (int y = 0; y < half.height(); ++y) {
        for (int x = 0; x < half.width(); ++x)
            half.setPixel(x, y, meanOfFour(picture, 2 * x, 2 * y));
    }
    return half;
}

/// The nearest of so many levels, of which the first is 0 and the last 255.
int nearest(int channel, int levels)
{
    const int level = (channel * (levels - 1) + 127) / 255;
    return (level * 255 + (levels - 1) / 2) / (levels - 1);
}

QImage rounded(QImage picture, int levels)
{
    for (int y = 0; y < picture.height(); ++y) {
        for (int x = 0; x < picture.width(); ++x) {
            const QRgb dot = picture.pixel(x, y);
            picture.setPixel(x, y,
                             qRgb(nearest(qRed(dot), levels), nearest(qGreen(dot), levels),
                                  nearest(qBlue(dot), levels)));
        }
    }
    return picture;
}

QVector<QRgb> coloursOf(const QImage &picture)
{
    QVector<QRgb> colours;
    QSet<QRgb> met;
    for (int y = 0; y < picture.height(); ++y) {
        for (int x = 0; x < picture.width(); ++x) {
            const QRgb dot = picture.pixel(x, y);
            if (!met.contains(dot)) {
                met.insert(dot);
                colours.append(dot);
            }
        }
    }
    return colours;
}

} // namespace

bool Likeness::isAlike() const
{
    return sameSize && differing <= mostDots;
}

QImage kept(const QImage &picture)
{
    const QImage half = halved(picture);
    for (const int levels : {32, 16}) {
        const QImage coarse = rounded(half, levels);
        const QVector<QRgb> colours = coloursOf(coarse);
        if (colours.size() <= mostColours)
            return coarse.convertToFormat(QImage::Format_Indexed8, colours);
    }
    return half;
}

Likeness compare(const QImage &reference, const QImage &now)
{
    Likeness likeness;
    const QImage half = halved(now);
    likeness.sameSize = reference.size() == half.size();
    if (!likeness.sameSize)
        return likeness;
    for (int y = 0; y < half.height(); ++y) {
        for (int x = 0; x < half.width(); ++x)
            likeness.differing += differs(reference.pixel(x, y), half.pixel(x, y)) ? 1 : 0;
    }
    return likeness;
}

QImage sideBySide(const QImage &reference, const QImage &now)
{
    constexpr int gap = 8;
    const QImage half = halved(now);
    QImage difference(half.size(), QImage::Format_RGB32);
    difference.fill(Qt::white);
    for (int y = 0; y < half.height(); ++y) {
        for (int x = 0; x < half.width(); ++x) {
            const bool beyond = !reference.rect().contains(x, y);
            if (beyond || differs(reference.pixel(x, y), half.pixel(x, y)))
                difference.setPixel(x, y, qRgb(0, 0, 0));
        }
    }
    QImage all(3 * now.width() + 2 * gap, now.height(), QImage::Format_RGB32);
    all.fill(Qt::darkGray);
    QPainter painter(&all);
    painter.drawImage(0, 0, reference.scaled(reference.size() * 2));
    painter.drawImage(now.width() + gap, 0, now);
    painter.drawImage(2 * (now.width() + gap), 0, difference.scaled(now.size()));
    return all;
}

} // namespace lidlark::pictures
