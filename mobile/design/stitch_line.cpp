#include "stitch_line.h"

#include "dashes.h"

#include <QtGui/QPainter>

namespace lidlark::design {

void StitchLine::setThickness(qreal thickness)
{
    if (take(m_thickness, thickness))
        emit stitchChanged();
}

void StitchLine::setOn(qreal on)
{
    if (take(m_on, on))
        emit stitchChanged();
}

void StitchLine::setOff(qreal off)
{
    if (take(m_off, off))
        emit stitchChanged();
}

void StitchLine::paint(QPainter *painter)
{
    const bool upright = height() > width();
    const qreal length = upright ? height() : width();
    const qreal middle = (upright ? width() : height()) / 2.0;
    const qreal end = m_thickness / 2.0;
    painter->setPen(dashPen(colour(), m_thickness, fittedOpen({m_on, m_off}, length)));
    painter->drawLine(upright ? QLineF(middle, end, middle, length)
                              : QLineF(end, middle, length, middle));
}

} // namespace lidlark::design
