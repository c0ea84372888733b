#include "build_paper.h"

#include "core/wording/build_sheet_words.h"
#include "core/wording/build_words.h"
#include "mobile/bridge/text.h"
#include "mobile/prints/words_row.h"

namespace lidlark::mobile {

namespace {

constexpr Column boxesTo{0, 160};
constexpr Column contentsTo{190, 1560};
constexpr Column worthTo{1580, 1880, true};

/// Boxes that hold the same, and what it is worth.
class KindRow
{
public:
    KindRow(BuildPaper paper, usecase::BoxesAlike kind)
        : m_paper(std::move(paper)), m_kind(std::move(kind))
    {
        QStringList codes;
        for (const std::string &code : m_kind.codes)
            codes.append(fromCore(code));
        m_codes = codes.join(QStringLiteral(", "));
        m_what = told();
        const int wide = m_paper.in(contentsTo, 0, 0).width();
        m_nameHigh = height(name(), 40, PrintSheet::Bold, wide);
        m_whatHigh = height(m_what, 32, PrintSheet::Plain, wide);
        m_high =
            m_nameHigh + m_whatHigh + height(m_codes, 28, PrintSheet::Plain, wide) + tenths(36);
    }

    [[nodiscard]] int height() const { return m_high; }
    void paint(PrintSheet &sheet, int top) const
    {
        const RowedPage &page = m_paper.page;
        const int first = top + tenths(14);
        sheet.words(page.in().number(std::ssize(m_kind.codes)), tenths(52), PrintSheet::Bold,
                    m_paper.in(boxesTo, first - tenths(6), m_high));
        QRect place = m_paper.in(contentsTo, first, m_high);
        sheet.words(name(), tenths(40), PrintSheet::Bold, place);
        place.translate(0, m_nameHigh);
        sheet.words(m_what, tenths(32), PrintSheet::Plain, place);
        place.translate(0, m_whatHigh);
        sheet.words(m_codes, tenths(28), PrintSheet::Plain, place);
        sheet.words(m_paper.money(m_kind.worth.pence), tenths(42), PrintSheet::End,
                    m_paper.in(worthTo, first, m_high));
        sheet.rule(page.margin(), page.right(), top + m_high);
    }

private:
    [[nodiscard]] int tenths(int ofA4) const { return m_paper.page.tenths(ofA4); }
    [[nodiscard]] int height(const QString &text, int pixels, int style, int wide) const
    {
        return text.isEmpty() ? 0 : m_paper.page.heightOf(text, tenths(pixels), style, wide);
    }
    [[nodiscard]] QString name() const
    {
        return m_kind.design.empty() ? m_paper.page.in().tell(wording::withoutDesign())
                                     : fromCore(m_kind.design);
    }
    /// How they differ from their design, and what is not reckoned.
    [[nodiscard]] QString told() const
    {
        const PrintLanguage &in = m_paper.page.in();
        const auto named = [this](const ItemId &item) { return m_paper.items.named(item); };
        QStringList lines;
        for (const workbench::DesignDifference &difference : m_kind.differences)
            lines.append(in.tell(wording::differenceSentence(difference, named)));
        if (lines.isEmpty() && !m_kind.design.empty())
            lines.append(in.tell(wording::asDesigned()));
        std::vector<wording::Argument> unpriced;
        for (const ItemId &item : m_kind.unpriced)
            unpriced.push_back(named(item));
        if (!unpriced.empty())
            lines.append(in.tell(wording::withoutPrice(std::move(unpriced))));
        return lines.join(u' ');
    }

    BuildPaper m_paper;
    usecase::BoxesAlike m_kind;
    QString m_codes;
    QString m_what;
    int m_nameHigh = 0;
    int m_whatHigh = 0;
    int m_high = 0;
};

} // namespace

void addBoxesTable(RowedPrint &print, const usecase::BuildSheetPage &sheet, const BuildPaper &paper)
{
    const PrintLanguage &in = paper.page.in();
    print.heads.push_back(rowOf(ColumnNames(paper.page, {{boxesTo, wording::boxesColumn()},
                                                         {contentsTo, wording::contentsColumn()},
                                                         {worthTo, wording::worthColumn()}})));
    print.rows.push_back(rowOf(
        WordsRow(paper.page, in.tell(wording::inEachBox()), 60, PrintSheet::Bold, 100), -1, true));
    print.rows.push_back(
        rowOf(WordsRow(paper.page, in.tell(wording::inEachBoxNote()), 34, PrintSheet::Plain, 6), -1,
              true));
    for (const usecase::BoxesAlike &kind : sheet.kinds)
        print.rows.push_back(rowOf(KindRow(paper, kind), 1));
}

} // namespace lidlark::mobile
