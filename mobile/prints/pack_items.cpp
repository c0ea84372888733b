#include "pack_paper.h"

#include "mobile/bridge/text.h"

#include <algorithm>

namespace lidlark::mobile {

namespace {

constexpr int cellsBeside = 4;
constexpr int cellWide = 440;
constexpr int cellStep = 480;

/// Picture, name, and how many of it all boxes need.
struct ItemHead {
    PackPaper paper;
    usecase::PackListItem item;

    /// For which hand all boxes want it.
    [[nodiscard]] workbench::Hand hand() const
    {
        const workbench::Hand first = item.places.front().line.hand;
        const bool all = std::ranges::all_of(
            item.places, [first](const auto &place) { return place.line.hand == first; });
        return all ? first : workbench::Hand::Unsaid;
    }
    [[nodiscard]] int height() const { return paper.page.tenths(150); }
    void paint(PrintSheet &sheet, int top) const
    {
        const RowedPage &page = paper.page;
        const int high = page.tenths(120);
        const int first = top + page.tenths(22);
        sheet.line({page.margin(), top + page.tenths(12)}, {page.right(), top + page.tenths(12)});
        sheet.picture(paper.items.drawingOf(item.item), page.between(0, 120, first, high));
        sheet.fittedWords(paper.items.title(item.item, item.pieces(), hand()), page.tenths(54),
                          page.tenths(30), PrintSheet::Bold | PrintSheet::Middle,
                          page.between(150, 1580, first, high), page.fromTheRight());
        sheet.words(page.in().number(item.pieces()), page.tenths(64),
                    PrintSheet::Bold | PrintSheet::Middle | PrintSheet::End,
                    page.between(1600, 1880, first, high));
    }
};

/// Up to three boxes beside each other.
class PlacesRow
{
public:
    PlacesRow(PackPaper paper, std::vector<usecase::PackListPlace> places)
        : m_paper(std::move(paper)), m_places(std::move(places))
    {
        for (const usecase::PackListPlace &place : m_places)
            m_called = std::max(m_called, calledHeight(place));
    }

    [[nodiscard]] int height() const { return tenths(98) + m_called; }
    void paint(PrintSheet &sheet, int top) const
    {
        for (int i = 0; i < static_cast<int>(m_places.size()); ++i)
            paintPlace(sheet, m_places[static_cast<std::size_t>(i)],
                       page().between(i * cellStep, i * cellStep + cellWide, top, height()));
    }

private:
    [[nodiscard]] const RowedPage &page() const { return m_paper.page; }
    [[nodiscard]] int tenths(int ofA4) const { return page().tenths(ofA4); }

    [[nodiscard]] QString calledOf(const usecase::PackListPlace &place) const
    {
        QStringList lines;
        for (const workbench::CallOut &call : place.callOuts)
            lines.append(m_paper.called(call));
        if (const QString wrong = m_paper.wrongWith(place.line); !wrong.isEmpty())
            lines.append(wrong);
        return lines.join(QChar::LineFeed);
    }
    [[nodiscard]] int calledHeight(const usecase::PackListPlace &place) const
    {
        const QString called = calledOf(place);
        return called.isEmpty()
                   ? 0
                   : page().heightOf(called, tenths(30), PrintSheet::Bold, tenths(cellWide - 40)) +
                         tenths(36);
    }

    void paintPlace(PrintSheet &sheet, const usecase::PackListPlace &place, const QRect &cell) const
    {
        const int side = tenths(packSquare);
        int left = cell.left();
        m_paper.square(sheet, left, cell.top() + tenths(16), place.line.isIn());
        left += side + tenths(12);
        if (place.special) {
            m_paper.square(sheet, left, cell.top() + tenths(16),
                           place.line.state == workbench::LineState::LookedOver);
            left += side + tenths(12);
        }
        left += tenths(8);
        const int wide = cell.left() + cell.width() - left;
        sheet.fittedWords(page().in().number(place.line.pieces) + QStringLiteral(" \u00d7 ") +
                              fromCore(place.code),
                          tenths(44), tenths(26), PrintSheet::Bold,
                          {left, cell.top() + tenths(2), wide, tenths(58)}, page().fromTheRight());
        sheet.fittedWords(m_paper.whose(place.whose), tenths(32), tenths(22), PrintSheet::Plain,
                          {left, cell.top() + tenths(52), wide, tenths(44)}, page().fromTheRight());
        if (const QString called = calledOf(place); !called.isEmpty())
            paintCalled(sheet, called,
                        {cell.left(), cell.top() + tenths(98), cell.width(),
                         calledHeight(place) - tenths(14)});
    }

    void paintCalled(PrintSheet &sheet, const QString &called, const QRect &block) const
    {
        sheet.block(block);
        sheet.words(called, tenths(30), PrintSheet::Bold | PrintSheet::White,
                    block.adjusted(tenths(20), tenths(10), -tenths(20), 0));
    }

    PackPaper m_paper;
    std::vector<usecase::PackListPlace> m_places;
    int m_called = 0;
};

} // namespace

void addPackItems(RowedPrint &print, const usecase::PackListPage &list, const PackPaper &paper)
{
    for (const usecase::PackListItem &item : list.items) {
        const int head = static_cast<int>(print.heads.size());
        print.heads.push_back(rowOf(ItemHead{paper, item}));
        for (std::size_t i = 0; i < item.places.size(); i += cellsBeside) {
            const auto from = item.places.begin() + static_cast<std::ptrdiff_t>(i);
            const bool last = i + cellsBeside >= item.places.size();
            const auto to = last ? item.places.end() : from + cellsBeside;
            print.rows.push_back(rowOf(PlacesRow(paper, {from, to}), head, !last));
        }
    }
}

} // namespace lidlark::mobile
