#include "rope.h"

#include <QtGui/QPainter>

namespace lidlark::design {
namespace {

constexpr qreal thickness = 2.0;

}

void Rope::paint(QPainter *painter)
{
    const qreal end = thickness / 2.0;
    const QPointF low(width() / 2.0, height() - end);
    painter->setPen(QPen(colour(), thickness, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter->drawPolyline(QPolygonF({QPointF(0.0, end), low, QPointF(width(), end)}));
}

} // namespace lidlark::design
