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

std::vector<Dot> dotsOf(const QImage &with, const QImage &without, const QRect &where)
{
    std::vector<Dot> dots;
    for (int y = where.top(); y <= where.bottom(); ++y) {
        for (int x = where.left(); x <= where.right(); ++x) {
            const QRgb ink = with.pixel(x, y);
            const QRgb ground = without.pixel(x, y);
            if (difference(ink, ground) >= leastDifference)
                dots.push_back({ink, ground, ratioOf(ink, ground)});
        }
    }
    return dots;
}

/// The colour of the dots that differ most: the middle one of the strongest tenth.
QColor fullColour(std::vector<Dot> &dots)
{
    std::sort(dots.begin(), dots.end(),
              [](const Dot &one, const Dot &other) { return one.ratio > other.ratio; });
    return QColor(dots[dots.size() / 20].ink);
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
            differing += ratioOf(greyOne.pixel(x, y), greyOther.pixel(x, y)) >= standsOut ? 1 : 0;
        }
    }
    return differing;
}

} // namespace lidlark::audit
