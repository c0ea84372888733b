#include "kite_string.h"

#include <QtGui/QPainter>
#include <QtGui/QPainterPath>

namespace lidlark::design {
namespace {

constexpr qreal sag = 0.14; // of the string's length

}

void KiteString::setHand(const QPointF &hand)
{
    if (take(m_hand, hand))
        emit handChanged();
}

void KiteString::setKite(const QPointF &kite)
{
    if (take(m_kite, kite))
        emit kiteChanged();
}

void KiteString::setThickness(qreal thickness)
{
    if (take(m_thickness, thickness))
        emit thicknessChanged();
}

void KiteString::paint(QPainter *painter)
{
    const QLineF straight(m_hand, m_kite);
    const QPointF low = straight.pointAt(0.5) + QPointF(0.0, sag * straight.length());
    QPainterPath path(m_hand);
    path.quadTo(low, m_kite);
    painter->setPen(QPen(colour(), m_thickness, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter->drawPath(path);
}

} // namespace lidlark::design
