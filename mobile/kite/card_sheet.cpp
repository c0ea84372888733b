#include "card_sheet.h"

#include "mobile/design/drawing_shelf.h"
#include "mobile/design/type_roles.h"

#include <QFile>
#include <QGuiApplication>
#include <QSvgRenderer>
#include <QTextLayout>

namespace lidlark::mobile {

namespace {

// Black line on white: no colour needed (checkin.md 11).
const design::DrawingColours printed{Qt::black, Qt::white, Qt::white};
constexpr double frameLine = 6.0;
constexpr double cutLine = 2.0;
constexpr double writingLine = 4.0;
constexpr double lineStep = 1.3; // Andika's own is 1.6: made for screens, loose on a small card
constexpr int tileRadius = 40;
constexpr int cornerRadius = 60;
constexpr int cutInset = 8;

QPen inked(double width)
{
    return {Qt::black, width, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin};
}

} // namespace

CardSheet::CardSheet(QPainter &painter, const QSize &size)
    : m_painter(painter), m_size(size),
      m_mirrored(QGuiApplication::layoutDirection() == Qt::RightToLeft)
{
    m_painter.setRenderHint(QPainter::Antialiasing);
    m_painter.setLayoutDirection(QGuiApplication::layoutDirection());
    m_painter.setBrush(Qt::NoBrush);
}

QRect CardSheet::mirrored(const QRect &place) const
{
    if (!m_mirrored)
        return place;
    return {m_size.width() - place.x() - place.width(), place.y(), place.width(), place.height()};
}

void CardSheet::outline()
{
    m_painter.setPen(inked(cutLine));
    m_painter.drawRoundedRect(
        QRect(QPoint(), m_size).adjusted(cutInset, cutInset, -cutInset, -cutInset), cornerRadius,
        cornerRadius);
}

void CardSheet::frame(const QRect &place)
{
    m_painter.setPen(inked(frameLine));
    m_painter.drawRoundedRect(mirrored(place), tileRadius, tileRadius);
}

void CardSheet::drawing(const QString &name, const QRect &place, double scale)
{
    QFile file(design::drawingPath(name));
    if (!file.open(QIODevice::ReadOnly))
        return;
    QSvgRenderer renderer(design::recoloured(file.readAll(), printed));
    QRectF area(QPointF(), QSizeF(renderer.viewBoxF().size() * scale));
    area.moveCenter(QRectF(mirrored(place)).center());
    renderer.render(&m_painter, area);
}

int CardSheet::words(const QString &text, int pixels, int style, const QRect &place)
{
    const bool bold = (style & Bold) != 0;
    const design::Reading reading{1.0, m_mirrored};
    QFont font = design::typeStyle(design::ThemeChoices::Body, bold, reading).font;
    font.setPixelSize(pixels);
    QTextLayout layout(text, font, m_painter.device());
    const Qt::Alignment start = m_mirrored ? Qt::AlignRight : Qt::AlignLeft;
    QTextOption option((style & Centred) != 0 ? Qt::AlignHCenter : start);
    option.setTextDirection(QGuiApplication::layoutDirection());
    layout.setTextOption(option);
    const int step = qRound(pixels * lineStep);
    int height = 0;
    layout.beginLayout();
    for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
        line.setLineWidth(place.width());
        line.setPosition({0.0, static_cast<double>(height)});
        height += step;
    }
    layout.endLayout();
    // What a line is higher than the step lies above its letters.
    const double lift = (layout.lineAt(0).height() - step) / 2;
    const int down = (style & Middle) != 0 ? (place.height() - height) / 2 : 0;
    m_painter.setPen(Qt::black);
    layout.draw(&m_painter, mirrored(place).topLeft() + QPointF(0.0, down - lift));
    return height;
}

void CardSheet::line(const QPoint &from, const QPoint &to)
{
    m_painter.setPen(inked(writingLine));
    const QRect place = mirrored({from, QSize(to.x() - from.x(), 1)});
    m_painter.drawLine(place.topLeft(), place.topRight());
}

} // namespace lidlark::mobile
