#pragma once

#include <QPainter>
#include <QRect>
#include <QString>

namespace lidlark::mobile {

/// One page or card to print, with what may be put on it: framed pictures, words, lines, squares to
/// write in. Black on white, and nothing by colour. Places are in tenths of a millimetre and given
/// for a language that runs from left to right; in the other direction they mirror, and the
/// pictures stay as they are.
class PrintSheet
{
public:
    enum Style {
        Plain = 0,
        Bold = 1,
        Centred = 2,
        Middle = 4,
        End = 8,
        White = 16 ///< On a block.
    };

    /// In the direction of the app.
    PrintSheet(QPainter &painter, const QSize &size);
    PrintSheet(QPainter &painter, const QSize &size, bool fromTheRight);

    [[nodiscard]] const QSize &size() const { return m_size; }
    [[nodiscard]] bool fromTheRight() const { return m_mirrored; }

    /// Where to cut, with the corners round: sharp ones scratch (checkin.md 11).
    void outline();
    void frame(const QRect &place);
    /// In the middle of @p place. @param scale of the drawing's own units.
    void drawing(const QString &name, const QRect &place, double scale);
    /// As large as @p place lets it be. Nothing where there is no such drawing.
    void picture(const QString &name, const QRect &place);
    /// What matters of a scene: its middle, cropped as on an offer (look.md 5), with an edge.
    void scene(const QString &name, const QRect &place);
    /// @param pixels height of the letters' body. @param style of Style.
    /// @returns the height it took.
    int words(const QString &text, int pixels, int style, const QRect &place);
    /// In a script that runs the other way than the page, from its own side of @p place.
    int words(const QString &text, int pixels, int style, const QRect &place, bool fromTheRight);
    /// Words as large as they fit into @p place, at most @p most, at least @p least high.
    int fittedWords(const QString &text, int most, int least, int style, const QRect &place,
                    bool fromTheRight);
    /// Black, for white words.
    void block(const QRect &place);
    /// To write on.
    void line(const QPoint &from, const QPoint &to);
    /// Between two parts of a page.
    void rule(int left, int right, int top);
    /// To write a number in; @p struck: nothing can be said here.
    void square(const QRect &place, bool struck = false);
    /// In a square: done before it was printed.
    void tick(const QRect &place);

private:
    [[nodiscard]] QRect mirrored(const QRect &place) const;

    QPainter &m_painter;
    QSize m_size;
    bool m_mirrored;
};

/// The height that @p text takes on a width, as PrintSheet sets it; a word wider than that: none
/// that is enough.
int heightOfWords(const QString &text, int pixels, int style, int width, bool fromTheRight);
/// The largest size of letters from @p most down to @p least in which @p text fits @p room.
int fittingPixels(const QString &text, int most, int least, int style, const QSize &room,
                  bool fromTheRight);

} // namespace lidlark::mobile
