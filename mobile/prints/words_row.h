#pragma once

#include "mobile/prints/rows_on_pages.h"

#include <utility>

namespace lidlark::mobile {

/// Words across the page.
class WordsRow
{
public:
    WordsRow(RowedPage page, QString text, int pixels, int style, int before)
        : m_page(std::move(page)), m_text(std::move(text)), m_pixels(m_page.tenths(pixels)),
          m_style(style), m_before(m_page.tenths(before))
    {
    }

    [[nodiscard]] int height() const
    {
        return m_before + m_page.heightOf(m_text, m_pixels, m_style, m_page.width());
    }
    void paint(PrintSheet &sheet, int top) const
    {
        sheet.words(m_text, m_pixels, m_style,
                    {m_page.margin(), top + m_before, m_page.width(), 0});
    }

private:
    RowedPage m_page;
    QString m_text;
    int m_pixels;
    int m_style;
    int m_before;
};

} // namespace lidlark::mobile
