#include "build_paper.h"

#include "core/wording/build_sheet_words.h"
#include "mobile/bridge/text.h"

#include <algorithm>
#include <array>

namespace lidlark::mobile {

namespace {

constexpr int numeral = PrintSheet::End | PrintSheet::Middle;

constexpr std::array<Column, 7> columns{{{120, 550},
                                         {560, 720, true},
                                         {730, 850, true},
                                         {860, 1000, true},
                                         {1040, 1510},
                                         {1520, 1700, true},
                                         {1710, 1880, true}}};

/// One item: what it needs, what is bought of it, and what that leaves.
class BoughtRow
{
public:
    BoughtRow(BuildPaper paper, usecase::BuildSheetLine line)
        : m_paper(std::move(paper)), m_line(std::move(line))
    {
        QStringList packs;
        for (const usecase::PacksBought &bought : m_line.packs) {
            packs.append(in().tell(wording::packsToBuy(bought.packs, bought.pieces,
                                                       toCore(m_paper.money(bought.price.pence)))));
            if (!bought.shop.empty())
                packs.append(fromCore(bought.shop));
        }
        m_packs =
            packs.isEmpty() ? in().tell(wording::shelfHasEnough()) : packs.join(QChar::LineFeed);
        const int wide = m_paper.in(columns[4], 0, 0).width();
        m_high = std::max(tenths(96),
                          m_paper.page.heightOf(m_packs, tenths(31), PrintSheet::Plain, wide) +
                              tenths(14));
    }

    [[nodiscard]] int height() const { return m_high; }
    void paint(PrintSheet &sheet, int top) const
    {
        const RowedPage &page = m_paper.page;
        const int side = tenths(88);
        sheet.picture(m_paper.items.drawingOf(m_line.item),
                      {page.margin() + tenths(8), top + (m_high - side) / 2, side, side});
        sheet.fittedWords(m_paper.items.title(m_line.item), tenths(36), tenths(24),
                          PrintSheet::Middle, m_paper.in(columns[0], top, m_high),
                          page.fromTheRight());
        const std::array counts{m_line.need, m_line.spares, m_line.onTheShelf};
        for (std::size_t i = 0; i < counts.size(); ++i)
            sheet.words(in().number(counts.at(i)), tenths(36), numeral,
                        m_paper.in(columns.at(i + 1), top, m_high));
        sheet.words(m_packs, tenths(31), PrintSheet::Middle, m_paper.in(columns[4], top, m_high));
        sheet.fittedWords(m_paper.money(m_line.spend.pence), tenths(36), tenths(24),
                          numeral | PrintSheet::Bold, m_paper.in(columns[5], top, m_high),
                          page.fromTheRight());
        sheet.words(in().number(m_line.leftOver), tenths(36), numeral,
                    m_paper.in(columns[6], top, m_high));
        sheet.rule(page.margin(), page.right(), top + m_high);
    }

private:
    [[nodiscard]] int tenths(int ofA4) const { return m_paper.page.tenths(ofA4); }
    [[nodiscard]] const PrintLanguage &in() const { return m_paper.page.in(); }

    BuildPaper m_paper;
    usecase::BuildSheetLine m_line;
    QString m_packs;
    int m_high = 0;
};

/// The sum at the till.
struct SpendRow {
    BuildPaper paper;
    std::int64_t pence = 0;

    [[nodiscard]] int height() const { return paper.page.tenths(150); }
    void paint(PrintSheet &sheet, int top) const
    {
        const RowedPage &page = paper.page;
        sheet.frame(page.between(0, 1880, top + page.tenths(24), page.tenths(110)));
        const int middle = top + page.tenths(24);
        sheet.fittedWords(page.in().tell(wording::spendToday()), page.tenths(50), page.tenths(30),
                          PrintSheet::Bold | PrintSheet::Middle,
                          page.between(40, 1180, middle, page.tenths(110)), page.fromTheRight());
        sheet.words(paper.money(pence), page.tenths(56), numeral | PrintSheet::Bold,
                    page.between(1200, 1840, middle, page.tenths(110)));
    }
};

} // namespace

void ColumnNames::paint(PrintSheet &sheet, int top) const
{
    for (const auto &[column, words] : m_names)
        sheet.fittedWords(m_page.in().tell(words), m_page.tenths(34), m_page.tenths(20),
                          PrintSheet::Bold | PrintSheet::Middle |
                              (column.counted ? PrintSheet::End : PrintSheet::Plain),
                          m_page.between(column.from, column.to, top, m_page.tenths(90)),
                          m_page.fromTheRight());
    const int under = top + m_page.tenths(94);
    sheet.line({m_page.margin(), under}, {m_page.right(), under});
}

void addBoughtTable(RowedPrint &print, const usecase::BuildSheetPage &sheet,
                    const BuildPaper &paper)
{
    ColumnNames::Names names;
    for (std::size_t i = 0; i < columns.size(); ++i)
        names.emplace_back(columns.at(i),
                           wording::sheetColumn(static_cast<wording::SheetColumn>(i)));
    print.heads.push_back(rowOf(ColumnNames(paper.page, std::move(names))));
    for (const usecase::BuildSheetLine &line : sheet.lines)
        print.rows.push_back(rowOf(BoughtRow(paper, line), 0, line == sheet.lines.back()));
    print.rows.push_back(rowOf(SpendRow{paper, sheet.spend.pence}, 0));
}

} // namespace lidlark::mobile
