#include "drawing_shelf.h"

#include <QtCore/QCache>
#include <QtCore/QFile>
#include <QtCore/QHash>
#include <QtCore/QRegularExpression>
#include <QtGui/QPainter>
#include <QtSvg/QSvgRenderer>

namespace lidlark::design {
namespace {

// The colours that the drawings are printed in (reference/look/look.md, section 5).
constexpr const char *printedInk = "#26211B";
constexpr const char *printedTint = "#EFBF72";
constexpr const char *printedPaper = "#FFFBF2";

constexpr qsizetype shelfBytes = 2'097'152;
constexpr qsizetype keptUpTo = 131'072;

QByteArray drawingText(const QString &name)
{
    QFile file(drawingPath(name));
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

/// Read from the text alone: parsing the whole drawing for it would double the work.
QRectF viewBoxOf(const QByteArray &svg)
{
    static const QRegularExpression form(QStringLiteral(
        "<svg[^>]*viewBox=\"([-\\d.]+)[ ,]+([-\\d.]+)[ ,]+([-\\d.]+)[ ,]+([-\\d.]+)\""));
    const QRegularExpressionMatch found = form.match(QString::fromUtf8(svg));
    if (!found.hasMatch())
        return {};
    return {found.captured(1).toDouble(), found.captured(2).toDouble(),
            found.captured(3).toDouble(), found.captured(4).toDouble()};
}

QString keyOf(const DrawingWish &wish)
{
    return QStringLiteral("%1 %2 %3 %4 %5 %6 %7 %8")
        .arg(wish.name)
        .arg(wish.window.x())
        .arg(wish.window.width())
        .arg(wish.pixels.width())
        .arg(wish.pixels.height())
        .arg(wish.colours.ink.rgba())
        .arg(wish.colours.tint.rgba())
        .arg(wish.colours.paper.rgba());
}

QImage render(const DrawingWish &wish)
{
    QSvgRenderer renderer(recoloured(drawingText(wish.name), wish.colours));
    if (!renderer.isValid() || wish.pixels.isEmpty())
        return {};
    renderer.setViewBox(wish.window);
    QImage image(wish.pixels, QImage::Format_ARGB32_Premultiplied);
    image.fill(Qt::transparent);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    renderer.render(&painter, QRectF(QPointF(), QSizeF(wish.pixels)));
    return image;
}

} // namespace

QString drawingPath(const QString &name)
{
    return QStringLiteral(":/lidlark/drawings/%1.svg").arg(name);
}

bool hasDrawing(const QString &name)
{
    return !name.isEmpty() && QFile::exists(drawingPath(name));
}

QRectF drawingArea(const QString &name)
{
    static QHash<QString, QRectF> areas;
    const auto known = areas.constFind(name);
    if (known != areas.constEnd())
        return *known;
    return *areas.insert(name, viewBoxOf(drawingText(name)));
}

QByteArray recoloured(const QByteArray &svg, const DrawingColours &colours)
{
    QString text = QString::fromUtf8(svg);
    // By way of words that no drawing holds: paper may become what ink was, and the reverse.
    text.replace(QLatin1String(printedInk), QLatin1String("{ink}"), Qt::CaseInsensitive);
    text.replace(QLatin1String(printedTint), QLatin1String("{tint}"), Qt::CaseInsensitive);
    text.replace(QLatin1String(printedPaper), QLatin1String("{paper}"), Qt::CaseInsensitive);
    text.replace(QLatin1String("{ink}"), colours.ink.name());
    text.replace(QLatin1String("{tint}"), colours.tint.name());
    text.replace(QLatin1String("{paper}"), colours.paper.name());
    return text.toUtf8();
}

QImage drawingPicture(const DrawingWish &wish)
{
    static QCache<QString, QImage> shelf(shelfBytes);
    const QString key = keyOf(wish);
    if (const QImage *kept = shelf.object(key))
        return *kept;
    QImage picture = render(wish);
    if (!picture.isNull() && picture.sizeInBytes() <= keptUpTo)
        shelf.insert(key, new QImage(picture), picture.sizeInBytes());
    return picture;
}

} // namespace lidlark::design
