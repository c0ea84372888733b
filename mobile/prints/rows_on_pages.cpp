#include "rows_on_pages.h"

#include "core/wording/build_sheet_words.h"

namespace lidlark::mobile {

namespace {

/// What stands on one page: rows from one to before another.
struct Cut {
    std::size_t from = 0;
    std::size_t to = 0;
};

/// Goes through the rows and cuts them into pages.
class Cutter
{
public:
    Cutter(const RowedPrint &print, int room) : m_print(print), m_room(room) {}

    std::vector<Cut> cuts()
    {
        std::vector<Cut> cuts;
        Cut page;
        int y = 0;
        for (std::size_t i = 0; i < m_print.rows.size(); ++i) {
            if (i > page.from && y + neededAt(i, page.from) > m_room) {
                cuts.push_back({page.from, i});
                page.from = i;
                y = 0;
            }
            y += headAt(i, page.from) + m_print.rows[i].high;
        }
        cuts.push_back({page.from, m_print.rows.size()});
        return cuts;
    }

private:
    /// Height of the head that row @p i begins with on a page that begins with row @p first.
    [[nodiscard]] int headAt(std::size_t i, std::size_t first) const
    {
        const int head = m_print.rows[i].head;
        if (head < 0 || (i > first && m_print.rows[i - 1].head == head))
            return 0;
        return m_print.heads[static_cast<std::size_t>(head)].high;
    }

    [[nodiscard]] bool begins(std::size_t i) const
    {
        return i == 0 || !m_print.rows[i - 1].withNext;
    }

    /// Of all rows that hang together from @p i on, or of that row, where they are too many.
    [[nodiscard]] int neededAt(std::size_t i, std::size_t first) const
    {
        const int alone = headAt(i, first) + m_print.rows[i].high;
        if (!begins(i))
            return alone;
        int all = alone;
        for (std::size_t next = i + 1; next < m_print.rows.size() && !begins(next); ++next)
            all += headAt(next, first) + m_print.rows[next].high;
        return all <= m_room ? all : alone;
    }

    const RowedPrint &m_print;
    int m_room;
};

void paintTop(PrintSheet &sheet, const RowedPrint &print, const RowedPage &page, int number,
              int pages)
{
    const auto place = [&page](int top, int high) {
        return QRect(page.margin(), page.tenths(top), page.width(), page.tenths(high));
    };
    sheet.words(print.title, page.tenths(80), PrintSheet::Bold, place(100, 110));
    const QString which = page.in().tell(wording::pageOf(number, pages));
    sheet.words(which, page.tenths(34), PrintSheet::End, place(212, 50));
    QRect note = place(206, 60);
    note.setWidth(page.width() - page.tenths(340));
    sheet.fittedWords(print.note, page.tenths(40), page.tenths(26), PrintSheet::Plain, note,
                      page.fromTheRight());
}

void paintRows(PrintSheet &sheet, const RowedPrint &print, const RowedPage &page, const Cut &cut)
{
    int y = page.top();
    for (std::size_t i = cut.from; i < cut.to; ++i) {
        const PrintRow &row = print.rows[i];
        if (row.head >= 0 && (i == cut.from || print.rows[i - 1].head != row.head)) {
            const PrintRow &head = print.heads[static_cast<std::size_t>(row.head)];
            head.paint(sheet, y);
            y += head.high;
        }
        row.paint(sheet, y);
        y += row.high;
    }
}

} // namespace

PrintPages rowsOnPages(RowedPrint print, const RowedPage &page)
{
    const auto kept = std::make_shared<const RowedPrint>(std::move(print));
    const std::vector<Cut> cuts = Cutter(*kept, page.foot() - page.top()).cuts();
    const int all = static_cast<int>(cuts.size());
    PrintPages pages;
    for (int i = 0; i < all; ++i) {
        pages.push_back({page.size(), [kept, page, i, all,
                                       cut = cuts[static_cast<std::size_t>(i)]](QPainter &painter) {
                             PrintSheet sheet(painter, page.size(), page.fromTheRight());
                             paintTop(sheet, *kept, page, i + 1, all);
                             paintRows(sheet, *kept, page, cut);
                         }});
    }
    return pages;
}

} // namespace lidlark::mobile
