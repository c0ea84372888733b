#include "painted_drawing.h"

#include "dashes.h"

#include <QtGui/QPainter>
#include <QtQuick/QQuickWindow>

#include <algorithm>

namespace lidlark::design {
namespace {

constexpr qreal missingSide = 96.0;
constexpr qreal missingFrame = 2.4;
constexpr qreal missingStep = 7.0;
constexpr qreal missingRadius = 7.0;

qreal dotsOf(const QQuickWindow *window)
{
    return window ? window->effectiveDevicePixelRatio() : 1.0;
}

void paintMissing(QPainter &painter, const QRectF &area, const QColor &ink)
{
    const qreal inset = missingFrame;
    QPainterPath frame;
    frame.addRoundedRect(area.adjusted(inset, inset, -inset, -inset), missingRadius, missingRadius);
    const Dashes dots = fittedClosed({missingFrame, missingStep - missingFrame}, frame.length());
    painter.strokePath(frame, dashPen(ink, missingFrame, dots));
}

void roundCorners(QPainter &painter, const QRectF &area, qreal radius)
{
    QPainterPath outside;
    outside.addRect(area);
    QPainterPath inside;
    inside.addRoundedRect(area, radius, radius);
    painter.setCompositionMode(QPainter::CompositionMode_DestinationOut);
    painter.fillPath(outside.subtracted(inside), Qt::black);
}

} // namespace

PaintedDrawing::PaintedDrawing(QQuickItem *parent) : QQuickPaintedItem(parent)
{
    setAntialiasing(true);
}

void PaintedDrawing::setName(const QString &name)
{
    if (m_name == name)
        return;
    m_name = name;
    lookUp();
}

void PaintedDrawing::setLeftHanded(bool leftHanded)
{
    if (m_leftHanded == leftHanded)
        return;
    m_leftHanded = leftHanded;
    lookUp();
}

void PaintedDrawing::setFit(Fit fit)
{
    if (m_fit == fit)
        return;
    m_fit = fit;
    update();
    emit fitChanged();
}

void PaintedDrawing::setCornerRadius(qreal radius)
{
    if (qFuzzyCompare(m_cornerRadius + 1.0, radius + 1.0))
        return;
    m_cornerRadius = radius;
    update();
    emit cornerRadiusChanged();
}

void PaintedDrawing::setInkColour(const QColor &colour)
{
    setPart(&DrawingColours::ink, colour);
}

void PaintedDrawing::setTintColour(const QColor &colour)
{
    setPart(&DrawingColours::tint, colour);
}

void PaintedDrawing::setPaperColour(const QColor &colour)
{
    setPart(&DrawingColours::paper, colour);
}

void PaintedDrawing::setPart(QColor DrawingColours::*part, const QColor &colour)
{
    if (m_colours.*part == colour)
        return;
    m_colours.*part = colour;
    update();
    emit coloursChanged();
}

void PaintedDrawing::lookUp()
{
    m_area = m_name.isEmpty() ? QRectF() : drawingArea(shownName());
    setImplicitSize(missing() ? missingSide : m_area.width(),
                    missing() ? missingSide : m_area.height());
    update();
    emit nameChanged();
}

QString PaintedDrawing::shownName() const
{
    const QString other = m_name + QStringLiteral("-left");
    return m_leftHanded && hasDrawing(other) ? other : m_name;
}

/// The part of the drawing that fills the item, in the drawing's units.
QRectF PaintedDrawing::window() const
{
    const qreal across = width() / m_area.width();
    const qreal down = height() / m_area.height();
    const qreal side = std::min(m_area.width(), m_area.height());
    qreal scale = std::min(across, down);
    if (m_fit == Cover)
        scale = std::max(across, down);
    else if (m_fit == Middle)
        scale = std::min(width(), height()) / side;
    QRectF part(0.0, 0.0, width() / scale, height() / scale);
    part.moveCenter(m_area.center());
    return part;
}

void PaintedDrawing::paint(QPainter *painter)
{
    if (m_name.isEmpty() || width() <= 0.0 || height() <= 0.0)
        return;
    if (missing())
        return paintMissing(*painter, boundingRect(), m_colours.ink);
    const qreal dots = dotsOf(QQuickItem::window());
    const QRectF shown = window();
    const QSize pixels = (size() * dots).toSize().expandedTo({1, 1});
    QImage picture = drawingPicture({shownName(), shown, pixels, m_colours});
    picture.setDevicePixelRatio(dots);
    if (m_fit == Whole) {
        // Arms run on beyond the edge of a drawing; a letterbox must not show them.
        const qreal scale = width() / shown.width();
        QRectF whole(QPointF(), m_area.size() * scale);
        whole.moveCenter(boundingRect().center());
        painter->setClipRect(whole);
    }
    painter->drawImage(QPointF(), picture);
    if (m_cornerRadius > 0.0)
        roundCorners(*painter, boundingRect(), m_cornerRadius);
}

} // namespace lidlark::design
