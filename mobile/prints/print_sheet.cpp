#include "print_sheet.h"

#include "mobile/design/drawing_shelf.h"
#include "mobile/design/type_roles.h"

#include <QFile>
#include <QGuiApplication>
#include <QSvgRenderer>
#include <QTextLayout>

#include <limits>

namespace lidlark::mobile {

namespace {

// Black line on white: no colour needed (checkin.md 11).
const design::DrawingColours printed{Qt::black, Qt::white, Qt::white};
constexpr double frameLine = 6.0;
constexpr double cutLine = 2.0;
constexpr double writingLine = 4.0;
constexpr double ruleLine = 2.5;
constexpr double lineStep = 1.3;  // Andika's own is 1.6: made for screens, loose on a small card
constexpr double naskhStep = 1.5; // marks above and below
constexpr double leastSpacing = 1.0 / 32; // a three-hundredth of a millimetre
constexpr int tileRadius = 40;
constexpr int cornerRadius = 60;
constexpr int cutInset = 8;
constexpr int squareRadius = 15;
constexpr int strokeShare = 5; // a struck square: a fifth of its width to each side

QPen inked(double width)
{
    return {Qt::black, width, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin};
}

int stepOf(int pixels, bool naskh)
{
    return qRound(pixels * (naskh ? naskhStep : lineStep));
}

QFont fontOf(int pixels, int style, bool naskh)
{
    const bool bold = (style & PrintSheet::Bold) != 0;
    QFont font = design::typeStyle(design::ThemeChoices::Body, bold, {1.0, naskh}).font;
    font.setPixelSize(pixels);
    font.setHintingPreference(QFont::PreferNoHinting);
    // With any letter spacing Qt sets no "fi" as one sign, which programs that read the file back
    // would not know for two letters. (Naskh needs its joined signs.)
    if (!naskh)
        font.setLetterSpacing(QFont::AbsoluteSpacing, leastSpacing);
    return font;
}

QTextOption optionOf(int style, bool fromTheRight)
{
    const bool atRight = fromTheRight != ((style & PrintSheet::End) != 0);
    const Qt::Alignment side = atRight ? Qt::AlignRight : Qt::AlignLeft;
    // Qt turns left and right round in a text that runs from the right, unless told not to.
    QTextOption option((style & PrintSheet::Centred) != 0 ? Qt::AlignHCenter
                                                          : side | Qt::AlignAbsolute);
    option.setTextDirection(fromTheRight ? Qt::RightToLeft : Qt::LeftToRight);
    option.setUseDesignMetrics(true); // those of paper, and not a screen's whole dots
    return option;
}

/// Breaks @p layout into lines of @p width. @returns the height; a word that is wider: none is
/// enough.
int breakLines(QTextLayout &layout, int width, int step)
{
    int height = 0;
    bool tooWide = false;
    layout.beginLayout();
    for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
        line.setLineWidth(width);
        line.setPosition({0.0, static_cast<double>(height)});
        tooWide = tooWide || line.naturalTextWidth() > width;
        height += step;
    }
    layout.endLayout();
    return tooWide ? std::numeric_limits<int>::max() : height;
}

/// A line feed is a line of its own.
QString inLines(QString text)
{
    return text.replace(u'\n', QChar::LineSeparator);
}

} // namespace

PrintSheet::PrintSheet(QPainter &painter, const QSize &size)
    : PrintSheet(painter, size, QGuiApplication::layoutDirection() == Qt::RightToLeft)
{
}

PrintSheet::PrintSheet(QPainter &painter, const QSize &size, bool fromTheRight)
    : m_painter(painter), m_size(size), m_mirrored(fromTheRight)
{
    m_painter.setRenderHint(QPainter::Antialiasing);
    m_painter.setLayoutDirection(fromTheRight ? Qt::RightToLeft : Qt::LeftToRight);
    m_painter.setBrush(Qt::NoBrush);
}

QRect PrintSheet::mirrored(const QRect &place) const
{
    if (!m_mirrored)
        return place;
    return {m_size.width() - place.x() - place.width(), place.y(), place.width(), place.height()};
}

void PrintSheet::outline()
{
    m_painter.setPen(inked(cutLine));
    m_painter.drawRoundedRect(
        QRect(QPoint(), m_size).adjusted(cutInset, cutInset, -cutInset, -cutInset), cornerRadius,
        cornerRadius);
}

void PrintSheet::frame(const QRect &place)
{
    m_painter.setPen(inked(frameLine));
    m_painter.drawRoundedRect(mirrored(place), tileRadius, tileRadius);
}

void PrintSheet::drawing(const QString &name, const QRect &place, double scale)
{
    QFile file(design::drawingPath(name));
    if (!file.open(QIODevice::ReadOnly))
        return;
    QSvgRenderer renderer(design::recoloured(file.readAll(), printed));
    QRectF area(QPointF(), QSizeF(renderer.viewBoxF().size() * scale));
    area.moveCenter(QRectF(mirrored(place)).center());
    renderer.render(&m_painter, area);
}

void PrintSheet::picture(const QString &name, const QRect &place)
{
    const QRectF area = design::drawingArea(name);
    if (area.isEmpty())
        return;
    drawing(name, place, std::min(place.width() / area.width(), place.height() / area.height()));
}

void PrintSheet::scene(const QString &name, const QRect &place)
{
    const QRectF area = design::drawingArea(name);
    if (area.isEmpty())
        return;
    m_painter.save();
    m_painter.setClipRect(mirrored(place));
    drawing(name, place, place.height() / area.height());
    m_painter.restore();
    m_painter.setPen(inked(ruleLine));
    m_painter.drawRect(mirrored(place));
}

int PrintSheet::words(const QString &text, int pixels, int style, const QRect &place)
{
    return words(text, pixels, style, place, m_mirrored);
}

int PrintSheet::words(const QString &text, int pixels, int style, const QRect &place,
                      bool fromTheRight)
{
    const int step = stepOf(pixels, fromTheRight);
    // Laid out as it was measured, for no device, or a line might break elsewhere.
    QTextLayout layout(inLines(text), fontOf(pixels, style, fromTheRight));
    layout.setTextOption(optionOf(style, fromTheRight));
    (void)breakLines(layout, place.width(), step);
    if (layout.lineCount() == 0)
        return 0;
    const int height = layout.lineCount() * step;
    // What a line is higher than the step lies above its letters.
    const double lift = (layout.lineAt(0).height() - step) / 2;
    const int down = (style & Middle) != 0 ? (place.height() - height) / 2 : 0;
    m_painter.setPen((style & White) != 0 ? Qt::white : Qt::black);
    layout.draw(&m_painter, mirrored(place).topLeft() + QPointF(0.0, down - lift));
    return height;
}

int PrintSheet::fittedWords(const QString &text, int most, int least, int style, const QRect &place,
                            bool fromTheRight)
{
    const int pixels = fittingPixels(text, most, least, style, place.size(), fromTheRight);
    return words(text, pixels, style, place, fromTheRight);
}

void PrintSheet::block(const QRect &place)
{
    m_painter.setPen(Qt::NoPen);
    m_painter.setBrush(Qt::black);
    m_painter.drawRoundedRect(mirrored(place), squareRadius, squareRadius);
    m_painter.setBrush(Qt::NoBrush);
}

void PrintSheet::line(const QPoint &from, const QPoint &to)
{
    m_painter.setPen(inked(writingLine));
    const QRect place = mirrored({from, QSize(to.x() - from.x(), 1)});
    m_painter.drawLine(place.topLeft(), place.topRight());
}

void PrintSheet::rule(int left, int right, int top)
{
    m_painter.setPen(inked(ruleLine));
    const QRect place = mirrored({left, top, right - left, 1});
    m_painter.drawLine(place.topLeft(), place.topRight());
}

void PrintSheet::square(const QRect &place, bool struck)
{
    const QRect shown = mirrored(place);
    m_painter.setPen(inked(struck ? ruleLine : writingLine));
    if (!struck) {
        const int radius = std::min(squareRadius, shown.height() / strokeShare / 2);
        m_painter.drawRoundedRect(shown, radius, radius);
        return;
    }
    const QPoint middle = shown.center();
    const int half = shown.width() / strokeShare;
    m_painter.drawLine(middle - QPoint(half, 0), middle + QPoint(half, 0));
}

void PrintSheet::tick(const QRect &place)
{
    const QRectF shown = mirrored(place);
    const auto at = [&shown](double x, double y) {
        return shown.topLeft() + QPointF(x * shown.width(), y * shown.height());
    };
    m_painter.setPen(inked(frameLine));
    m_painter.drawPolyline(QPolygonF{at(0.22, 0.52), at(0.42, 0.74), at(0.8, 0.26)});
}

int heightOfWords(const QString &text, int pixels, int style, int width, bool fromTheRight)
{
    QTextLayout layout(inLines(text), fontOf(pixels, style, fromTheRight));
    layout.setTextOption(optionOf(style, fromTheRight));
    return breakLines(layout, width, stepOf(pixels, fromTheRight));
}

int fittingPixels(const QString &text, int most, int least, int style, const QSize &room,
                  bool fromTheRight)
{
    int pixels = most;
    while (pixels > least &&
           heightOfWords(text, pixels, style, room.width(), fromTheRight) > room.height())
        --pixels;
    return pixels;
}

} // namespace lidlark::mobile
