#include "tests/audit/ink.h"

#include "tests/support/contrast.h"

#include <cmath>
#include <map>
#include <vector>

namespace lidlark::audit {

namespace {

constexpr int leastDifference = 12;
constexpr double standsOut = 3.0;

struct Dot {
    QRgb ink;
    QRgb ground;
    double ratio;
};

/// test::relativeLuminance for the many dots of a page.
double luminance(QRgb colour)
{
    static const std::vector<double> light = [] {
        std::vector<double> levels;
        levels.reserve(256);
        for (int level = 0; level < 256; ++level)
            levels.push_back(test::linearLight(level / 255.0));
        return levels;
    }();
    const auto of = [](int level) { return light[static_cast<std::size_t>(level)]; };
    return 0.2126 * of(qRed(colour)) + 0.7152 * of(qGreen(colour)) + 0.0722 * of(qBlue(colour));
}

double ratioOf(QRgb one, QRgb other)
{
    const double a = luminance(one);
    const double b = luminance(other);
    return (std::max(a, b) + 0.05) / (std::min(a, b) + 0.05);
}

int difference(QRgb one, QRgb other)
{
    return std::max({std::abs(qRed(one) - qRed(other)), std::abs(qGreen(one) - qGreen(other)),
                     std::abs(qBlue(one) - qBlue(other))});
}

/// @param with and the other: of four bytes a dot, as windows are grabbed.
std::vector<Dot> dotsOf(const QImage &with, const QImage &without, const QRect &where)
{
    std::vector<Dot> dots;
    for (int y = where.top(); y <= where.bottom(); ++y) {
        const auto *inks = reinterpret_cast<const QRgb *>(with.constScanLine(y));
        const auto *grounds = reinterpret_cast<const QRgb *>(without.constScanLine(y));
        for (int x = where.left(); x <= where.right(); ++x) {
            if (inks[x] != grounds[x] && difference(inks[x], grounds[x]) >= leastDifference)
                dots.push_back({inks[x], grounds[x], ratioOf(inks[x], grounds[x])});
        }
    }
    return dots;
}

/// The colour of the dots that differ most: the middle one of the strongest tenth.
QColor fullColour(std::vector<Dot> &dots)
{
    const auto middle = dots.begin() + static_cast<std::ptrdiff_t>(dots.size() / 20);
    std::nth_element(dots.begin(), middle, dots.end(),
                     [](const Dot &one, const Dot &other) { return one.ratio > other.ratio; });
    return QColor(middle->ink);
}

/// The grounds that at least a twelfth of the dots lie on, colours that are nearly alike as one.
std::vector<QColor> groundsOf(const std::vector<Dot> &dots)
{
    std::map<QRgb, std::vector<QRgb>> alike;
    for (const Dot &dot : dots)
        alike[dot.ground & 0xfff0f0f0].push_back(dot.ground);
    std::vector<QColor> grounds;
    for (const auto &[key, colours] : alike) {
        if (colours.size() * 12 >= dots.size())
            grounds.emplace_back(colours[colours.size() / 2]);
    }
    return grounds;
}

} // namespace

Ink inkOf(const QImage &with, const QImage &without, const QRect &where)
{
    Ink ink;
    Q_ASSERT(with.depth() == 32 && without.depth() == 32);
    std::vector<Dot> dots = dotsOf(with, without, where.intersected(with.rect()));
    ink.pixels = static_cast<int>(dots.size());
    if (dots.empty())
        return ink;
    for (const Dot &dot : dots)
        ink.seen += dot.ratio >= standsOut ? 1 : 0;
    ink.colour = fullColour(dots);
    ink.ratio = 21;
    for (const QColor &ground : groundsOf(dots)) {
        const double ratio = test::contrastRatio(ink.colour, ground);
        if (ratio <= ink.ratio) {
            ink.ratio = ratio;
            ink.ground = ground;
        }
    }
    return ink;
}

int greyDifference(const QImage &one, const QImage &other, const QRect &where)
{
    const QImage greyOne = one.convertToFormat(QImage::Format_Grayscale8);
    const QImage greyOther = other.convertToFormat(QImage::Format_Grayscale8);
    const QRect area = where.intersected(one.rect());
    int differing = 0;
    for (int y = area.top(); y <= area.bottom(); ++y) {
        for (int x = area.left(); x <= area.right(); ++x) {
            const QRgb before = greyOne.pixel(x, y);
            const QRgb after = greyOther.pixel(x, y);
            differing += before != after && ratioOf(before, after) >= standsOut ? 1 : 0;
        }
    }
    return differing;
}

} // namespace lidlark::audit
