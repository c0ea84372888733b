#include "dash_frame.h"

#include "dashes.h"

#include <QtGui/QPainter>

namespace lidlark::design {
namespace {

// look.md: dashes 4 on, 3 off in pen widths; dots as in the drawings of empty places.
constexpr qreal dashOn = 4.0;
constexpr qreal dashOff = 3.0;
constexpr qreal dotStep = 2.9;

Dashes dashesFor(bool dotted, qreal thickness)
{
    if (dotted)
        return {thickness, (dotStep - 1.0) * thickness};
    return {dashOn * thickness, dashOff * thickness};
}

} // namespace

void DashFrame::setThickness(qreal thickness)
{
    if (take(m_thickness, thickness))
        emit frameChanged();
}

void DashFrame::setRadius(qreal radius)
{
    if (take(m_radius, radius))
        emit frameChanged();
}

void DashFrame::setDotted(bool dotted)
{
    if (take(m_dotted, dotted))
        emit frameChanged();
}

void DashFrame::paint(QPainter *painter)
{
    const qreal inset = m_thickness / 2.0;
    QPainterPath frame;
    frame.addRoundedRect(boundingRect().adjusted(inset, inset, -inset, -inset), m_radius, m_radius);
    const Dashes dashes = fittedClosed(dashesFor(m_dotted, m_thickness), frame.length());
    painter->strokePath(frame, dashPen(colour(), m_thickness, dashes));
}

} // namespace lidlark::design
