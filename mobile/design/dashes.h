#pragma once

#include <QtGui/QPainterPath>
#include <QtGui/QPen>

namespace lidlark::design {

/// A dash pattern in px, before it is fitted to a length.
struct Dashes {
    qreal on = 6.0;
    qreal off = 5.0;
};

/// The pattern with its gaps stretched or squeezed so that a whole number of dashes fills
/// @p length: an open line then ends in a full dash, a closed one meets itself in a full gap.
Dashes fittedOpen(Dashes wish, qreal length);
Dashes fittedClosed(Dashes wish, qreal length);

/// A round-ended pen for @p dashes, whose visible dash is as long as asked.
QPen dashPen(const QColor &colour, qreal thickness, Dashes dashes);

} // namespace lidlark::design
