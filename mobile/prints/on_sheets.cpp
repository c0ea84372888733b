#include "print_page.h"

#include <QPainter>

#include <algorithm>

namespace lidlark::mobile {

namespace {

constexpr int markLong = 40;
constexpr double markLine = 2.0;

/// How cards lie on a sheet: so many beside and below each other, in its middle.
struct Grid {
    QSize sheet;
    QSize card;
    int columns = 0;
    int rows = 0;

    [[nodiscard]] int places() const { return columns * rows; }
    [[nodiscard]] int left() const { return (sheet.width() - columns * card.width()) / 2; }
    [[nodiscard]] int top() const { return (sheet.height() - rows * card.height()) / 2; }
    [[nodiscard]] QPoint corner(int place) const
    {
        return {left() + place % columns * card.width(), top() + place / columns * card.height()};
    }
};

Grid gridOn(QSize sheet, QSize card)
{
    // A sheet may be cut a millimetre short of two halves.
    constexpr int slack = 10;
    return {sheet, card, (sheet.width() + slack) / card.width(),
            (sheet.height() + slack) / card.height()};
}

Grid bestGrid(QSize sheet, QSize card)
{
    const Grid upright = gridOn(sheet, card);
    const Grid turned = gridOn(sheet.transposed(), card);
    return turned.places() > upright.places() ? turned : upright;
}

/// Into the margin where there is one; where the cards reach the edge, into their own.
void paintMarksAt(QPainter &painter, const Grid &grid, int across, bool upright)
{
    const int from = upright ? grid.top() : grid.left();
    const int whole = upright ? grid.sheet.height() : grid.sheet.width();
    const int border = std::max(0, from);
    const int reach = border > markLong / 2 ? -std::min(border, markLong) : markLong / 2;
    const auto mark = [&](int begin, int end) {
        if (upright)
            painter.drawLine(across, begin, across, end);
        else
            painter.drawLine(begin, across, end, across);
    };
    mark(border, border + reach);
    mark(whole - border, whole - border - reach);
}

void paintMarks(QPainter &painter, const Grid &grid)
{
    painter.setPen(QPen(Qt::black, markLine));
    for (int column = 0; column <= grid.columns; ++column)
        paintMarksAt(painter, grid, grid.left() + column * grid.card.width(), true);
    for (int row = 0; row <= grid.rows; ++row)
        paintMarksAt(painter, grid, grid.top() + row * grid.card.height(), false);
    // Where four cards meet.
    for (int column = 1; column < grid.columns; ++column) {
        for (int row = 1; row < grid.rows; ++row) {
            const QPoint middle = grid.corner(row * grid.columns + column);
            painter.drawLine(middle - QPoint(markLong / 2, 0), middle + QPoint(markLong / 2, 0));
            painter.drawLine(middle - QPoint(0, markLong / 2), middle + QPoint(0, markLong / 2));
        }
    }
}

PrintPage sheetOf(const Grid &grid, const PrintPages &cards)
{
    return {grid.sheet, [grid, cards](QPainter &painter) {
                for (int place = 0; place < static_cast<int>(cards.size()); ++place) {
                    painter.save();
                    painter.translate(grid.corner(place));
                    cards[static_cast<std::size_t>(place)].paint(painter);
                    painter.restore();
                }
                paintMarks(painter, grid);
            }};
}

} // namespace

PrintPages onSheets(const PrintPages &cards, QSize sheet, bool fill)
{
    if (cards.empty())
        return {};
    const Grid grid = bestGrid(sheet, cards.front().size);
    if (grid.places() < 2)
        return cards;
    PrintPages pages;
    PrintPages onThis;
    const auto places = static_cast<std::size_t>(grid.places());
    // Half a set more would only be taken for another card.
    const std::size_t sets = fill ? std::max<std::size_t>(1, places / cards.size()) : 1;
    const std::size_t wanted = sets * cards.size();
    for (std::size_t i = 0; i < wanted; ++i) {
        onThis.push_back(cards[i % cards.size()]);
        if (onThis.size() == places || i + 1 == wanted)
            pages.push_back(sheetOf(grid, std::exchange(onThis, {})));
    }
    return pages;
}

} // namespace lidlark::mobile
