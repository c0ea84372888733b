#include "cloth_strip.h"

#include "dashes.h"
#include "weave.h"

#include <QtGui/QPainter>
#include <QtGui/QPainterPath>

#include <cmath>

namespace lidlark::design {
namespace {

constexpr qreal toothWidth = 9.0;
constexpr qreal toothHeight = 5.0;
constexpr qreal threadWidth = 1.2;
constexpr qreal stitchBelow = 6.0;
constexpr qreal stitchWidth = 1.6;
constexpr qreal stitchMargin = 5.0;
constexpr Dashes stitches{8.6, 4.4}; // 7 on, 6 off, and the round ends.

/// The outline of the cloth, its teeth spread so that the strip begins and ends in a valley.
QPainterPath pinkedOutline(qreal width, qreal height)
{
    const qreal teeth = std::max(1.0, std::round(width / toothWidth));
    const qreal step = width / teeth;
    QPainterPath outline(QPointF(0.0, toothHeight));
    for (qreal tooth = 0.0; tooth < teeth; tooth += 1.0) {
        outline.lineTo((tooth + 0.5) * step, 0.0);
        outline.lineTo((tooth + 1.0) * step, toothHeight);
    }
    outline.lineTo(width, height);
    outline.lineTo(0.0, height);
    outline.closeSubpath();
    return outline;
}

} // namespace

void ClothStrip::setPlace(ThemeChoices::Place place)
{
    if (take(m_place, place))
        emit clothChanged();
}

void ClothStrip::setWeave(const QColor &weave)
{
    if (take(m_weave, weave))
        emit clothChanged();
}

void ClothStrip::setStitch(const QColor &stitch)
{
    if (take(m_stitch, stitch))
        emit clothChanged();
}

void ClothStrip::paint(QPainter *painter)
{
    const QPainterPath outline = pinkedOutline(width(), height());
    painter->fillPath(outline, colour());
    if (m_weave.alpha() > 0) {
        painter->save();
        painter->setClipPath(outline);
        painter->setPen(QPen(m_weave, threadWidth));
        paintWeave(*painter, boundingRect(), m_place);
        painter->restore();
    }
    const qreal y = toothHeight + stitchBelow;
    const qreal length = width() - 2.0 * stitchMargin;
    painter->setPen(dashPen(m_stitch, stitchWidth, fittedOpen(stitches, length)));
    painter->drawLine(QPointF(stitchMargin + stitchWidth / 2.0, y),
                      QPointF(width() - stitchMargin, y));
}

} // namespace lidlark::design
