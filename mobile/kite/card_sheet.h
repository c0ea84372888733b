#pragma once

#include <QPainter>
#include <QRect>
#include <QString>

namespace lidlark::mobile {

/// One side of a card to print, with what may be put on it: framed pictures, words, lines. Places
/// are in tenths of a millimetre and given for a language that runs from left to right; in the
/// other direction they mirror, and the pictures stay as they are.
class CardSheet
{
public:
    enum Style { Plain = 0, Bold = 1, Centred = 2, Middle = 4 };

    CardSheet(QPainter &painter, const QSize &size);

    /// Where to cut, with the corners round: sharp ones scratch (checkin.md 11).
    void outline();
    void frame(const QRect &place);
    /// In the middle of @p place. @param scale of the drawing's own units.
    void drawing(const QString &name, const QRect &place, double scale);
    /// @param pixels height of the letters' body. @param style of Style.
    /// @returns the height it took.
    int words(const QString &text, int pixels, int style, const QRect &place);
    void line(const QPoint &from, const QPoint &to);

private:
    [[nodiscard]] QRect mirrored(const QRect &place) const;

    QPainter &m_painter;
    QSize m_size;
    bool m_mirrored;
};

} // namespace lidlark::mobile
