#include "tally_marks.h"

#include <QtGui/QPainter>

#include <algorithm>

namespace lidlark::design {
namespace {

constexpr qreal strokeWidth = 3.0;
constexpr qreal strokeHeight = 8.0;
constexpr qreal step = 6.0;
constexpr qreal corner = 1.0;

} // namespace

TallyMarks::TallyMarks(QQuickItem *parent) : InkItem(parent)
{
    setImplicitHeight(strokeHeight);
}

void TallyMarks::setCount(int count)
{
    if (!take(m_count, std::max(0, count)))
        return;
    setImplicitWidth(m_count == 0 ? 0.0 : step * (m_count - 1) + strokeWidth);
    emit countChanged();
}

void TallyMarks::paint(QPainter *painter)
{
    painter->setPen(Qt::NoPen);
    painter->setBrush(colour());
    for (int stroke = 0; stroke < m_count; ++stroke)
        painter->drawRoundedRect(QRectF(step * stroke, 0.0, strokeWidth, strokeHeight), corner,
                                 corner);
}

} // namespace lidlark::design
