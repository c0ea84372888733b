#include "weave.h"

#include <QtGui/QPainter>
#include <QtGui/QPainterPath>

namespace lidlark::design {
namespace {

constexpr qreal twillStep = 5.0;
constexpr qreal herringboneWidth = 14.0;
constexpr qreal herringboneStep = 5.5;
constexpr qreal checkStep = 9.0;
constexpr qreal floatStep = 6.0;
constexpr qreal floatLength = 2.4;

void paintTwill(QPainter &painter, const QRectF &area)
{
    for (qreal x = area.left(); x < area.right() + area.height(); x += twillStep)
        painter.drawLine(QPointF(x, area.top()), QPointF(x - area.height(), area.bottom()));
}

void paintHerringbone(QPainter &painter, const QRectF &area)
{
    const qreal half = herringboneWidth / 2.0;
    for (qreal y = area.top() - half; y < area.bottom(); y += herringboneStep) {
        QPainterPath row(QPointF(area.left(), y));
        bool down = true;
        for (qreal x = area.left() + half; x < area.right() + half; x += half) {
            row.lineTo(x, down ? y + half : y);
            down = !down;
        }
        painter.drawPath(row);
    }
}

void paintCheck(QPainter &painter, const QRectF &area)
{
    for (qreal x = area.left() + checkStep; x < area.right(); x += checkStep)
        painter.drawLine(QPointF(x, area.top()), QPointF(x, area.bottom()));
    for (qreal y = area.top() + checkStep; y < area.bottom(); y += checkStep)
        painter.drawLine(QPointF(area.left(), y), QPointF(area.right(), y));
}

void paintFloats(QPainter &painter, const QRectF &area)
{
    bool shifted = false;
    for (qreal y = area.top() + floatStep / 2.0; y < area.bottom(); y += floatStep / 1.5) {
        const qreal start = area.left() + (shifted ? floatStep : 0.0);
        for (qreal x = start; x < area.right(); x += 2.0 * floatStep)
            painter.drawLine(QPointF(x, y), QPointF(x + floatLength, y));
        shifted = !shifted;
    }
}

} // namespace

void paintWeave(QPainter &painter, const QRectF &area, ThemeChoices::Place place)
{
    switch (place) {
    case ThemeChoices::Home:
        return paintTwill(painter, area);
    case ThemeChoices::SecondHome:
        return paintHerringbone(painter, area);
    case ThemeChoices::School:
        return paintCheck(painter, area);
    case ThemeChoices::Away:
        return paintFloats(painter, area);
    }
}

} // namespace lidlark::design
