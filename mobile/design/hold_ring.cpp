#include "hold_ring.h"

#include <QtGui/QPainter>

#include <algorithm>

namespace lidlark::design {
namespace {

constexpr qreal ringSize = 34.0;
// Shares of the item's half side, so that the ring rests as in the sign "press and hold".
constexpr qreal dotShare = 4.0 / 12.0;
constexpr qreal innerShare = 8.0 / 12.0;
constexpr qreal outerShare = 10.0 / 12.0;

} // namespace

HoldRing::HoldRing(QQuickItem *parent) : InkItem(parent)
{
    setImplicitSize(ringSize, ringSize);
}

void HoldRing::setProgress(qreal progress)
{
    if (take(m_progress, std::clamp(progress, 0.0, 1.0)))
        emit progressChanged();
}

void HoldRing::paint(QPainter *painter)
{
    const QPointF centre = boundingRect().center();
    const qreal half = std::min(width(), height()) / 2.0;
    const qreal outer = half * (outerShare + (1.0 - outerShare) * m_progress);
    const qreal inner = half * (innerShare - (innerShare - dotShare) * m_progress);
    painter->setPen(QPen(colour(), outer - inner));
    painter->drawEllipse(centre, (outer + inner) / 2.0, (outer + inner) / 2.0);
    painter->setPen(Qt::NoPen);
    painter->setBrush(colour());
    painter->drawEllipse(centre, half * dotShare, half * dotShare);
}

} // namespace lidlark::design
