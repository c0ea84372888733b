#pragma once

#include "mobile/prints/print_language.h"
#include "mobile/prints/print_page.h"
#include "mobile/prints/print_sheet.h"

#include <functional>
#include <memory>
#include <utility>
#include <vector>

namespace lidlark::mobile {

/// A page of rows: its language, its size, and measures in tenths of a millimetre of A4.
class RowedPage
{
public:
    RowedPage(PrintLanguage in, QSize size)
        : m_in(std::move(in)), m_size(size), m_unit(size.width() / 2100.0)
    {
    }

    [[nodiscard]] const PrintLanguage &in() const { return m_in; }
    [[nodiscard]] bool fromTheRight() const { return m_in.fromTheRight(); }
    [[nodiscard]] QSize size() const { return m_size; }
    [[nodiscard]] int tenths(int ofA4) const { return qRound(ofA4 * m_unit); }
    [[nodiscard]] int margin() const { return tenths(110); }
    [[nodiscard]] int right() const { return m_size.width() - margin(); }
    [[nodiscard]] int width() const { return right() - margin(); }
    /// Where rows begin and end.
    [[nodiscard]] int top() const { return tenths(300); }
    [[nodiscard]] int foot() const { return m_size.height() - margin(); }
    /// From one place of A4 to another, counted from the margin.
    [[nodiscard]] QRect between(int from, int to, int top, int high) const
    {
        return {margin() + tenths(from), top, tenths(to - from), high};
    }
    [[nodiscard]] int heightOf(const QString &text, int pixels, int style, int wide) const
    {
        return heightOfWords(text, pixels, style, wide, fromTheRight());
    }

private:
    PrintLanguage m_in;
    QSize m_size;
    double m_unit;
};

/// So much of a page as is never cut in two.
struct PrintRow {
    int high = 0;
    std::function<void(PrintSheet &, int top)> paint; ///< Holds all that it needs.
    /// Which of the heads stands over it, again on every page; below zero: none.
    int head = -1;
    /// The next row stands on the same page, where a page has room for all that so hang together.
    bool withNext = false;
};

/// @param part has `height()` and `paint(PrintSheet &, int top)`.
template <class Part> PrintRow rowOf(Part part, int head = -1, bool withNext = false)
{
    const auto kept = std::make_shared<const Part>(std::move(part));
    return {kept->height(), [kept](PrintSheet &sheet, int top) { kept->paint(sheet, top); }, head,
            withNext};
}

/// A print of rows under each other, on as many pages as they take.
struct RowedPrint {
    QString title;
    QString note; ///< Under the title; beside it stands which page it is.
    std::vector<PrintRow> heads;
    std::vector<PrintRow> rows;
};

PrintPages rowsOnPages(RowedPrint print, const RowedPage &page);

} // namespace lidlark::mobile
