#pragma once

#include <QImage>
#include <QRect>

namespace lidlark::audit {

/// What something adds to a picture of the page, pixel by pixel, against what lies beneath it.
struct Ink {
    int pixels = 0;   ///< That differ at all.
    double ratio = 0; ///< Its full colour against each ground that it lies on to some part: least.
    int seen = 0;     ///< Pixels that stand out by 3:1 or more.
    QColor colour;    ///< Its full colour.
    QColor ground;    ///< The ground of that ratio.
};

/// Compares the page with something and without it. Letters are thin and their edges blend, so the
/// full colour is that of the pixels that differ most; a ground counts from a twelfth of the
/// pixels.
[[nodiscard]] Ink inkOf(const QImage &with, const QImage &without, const QRect &where);

/// How many pixels of an area differ by 3:1 or more between two pictures when all colour is taken
/// away (QImage::Format_Grayscale8).
[[nodiscard]] int greyDifference(const QImage &one, const QImage &other, const QRect &where);

} // namespace lidlark::audit
