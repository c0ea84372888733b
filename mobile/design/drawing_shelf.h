#pragma once

#include <QtCore/QByteArray>
#include <QtCore/QRectF>
#include <QtCore/QSize>
#include <QtCore/QString>
#include <QtGui/QColor>
#include <QtGui/QImage>

namespace lidlark::design {

/// The three colours of a drawing.
struct DrawingColours {
    QColor ink;
    QColor tint;
    QColor paper;
    bool operator==(const DrawingColours &) const = default;
};

/// What part of a drawing is wanted, how large, in which colours.
struct DrawingWish {
    QString name;
    QRectF window; ///< Part to show, in the drawing's own units.
    QSize pixels;  ///< Device px it fills.
    DrawingColours colours;
};

/// Where the drawings of the app are compiled in, and how they are named.
QString drawingPath(const QString &name);
bool hasDrawing(const QString &name);

/// The whole area of a drawing in its own units, or an empty one when it is missing.
QRectF drawingArea(const QString &name);

/// An SVG text with the three printed colours exchanged for those of the look in force.
/// Pattern: a drawing holds no other colour, so exchanging text is exact.
QByteArray recoloured(const QByteArray &svg, const DrawingColours &colours);

/// The picture wished for, or a null image when the drawing is missing or unreadable.
/// Small pictures (pegs, signs, items) are kept for the next one who asks.
QImage drawingPicture(const DrawingWish &wish);

} // namespace lidlark::design
