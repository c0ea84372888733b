#pragma once

#include <QColor>

#include <algorithm>
#include <cmath>

namespace lidlark::test {

/// Relative luminance and contrast ratio of two colours.
/// Source: W3C, Web Content Accessibility Guidelines (WCAG) 2.2, definitions "relative luminance"
/// and "contrast ratio"; the bound 0.04045 is that of sRGB, which WCAG 2.2 adopted in 2021.
inline double linearLight(double channel)
{
    return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}

inline double relativeLuminance(const QColor &colour)
{
    return 0.2126 * linearLight(colour.redF()) + 0.7152 * linearLight(colour.greenF()) +
           0.0722 * linearLight(colour.blueF());
}

inline double contrastRatio(const QColor &one, const QColor &other)
{
    const double a = relativeLuminance(one);
    const double b = relativeLuminance(other);
    return (std::max(a, b) + 0.05) / (std::min(a, b) + 0.05);
}

} // namespace lidlark::test
