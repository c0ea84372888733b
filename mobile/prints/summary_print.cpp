#include "summary_print.h"

#include "core/wording/print_words.h"
#include "core/wording/summary_words.h"
#include "mobile/prints/print_sheet.h"
#include "mobile/prints/summary_text.h"

namespace lidlark::mobile {

namespace {

int styleOf(const SummaryLine &line)
{
    return line.bold ? PrintSheet::Bold : PrintSheet::Plain;
}

/// The parts under each other, in letters so large that all is on the page.
class SummarySheet
{
public:
    SummarySheet(const Summary &summary, const PrintLanguage &in, QSize size)
        : m_page(summary.page), m_in(in), m_size(size), m_unit(size.width() / 2100.0),
          m_parts(summaryParts(summary, in)), m_foot(summaryFoot(summary, in))
    {
        constexpr int least = 16;
        m_pixels = tenths(50);
        while (m_pixels > least && height() > foot() - top())
            --m_pixels;
    }

    void paint(QPainter &painter) const
    {
        PrintSheet sheet(painter, m_size, m_in.fromTheRight());
        paintHead(sheet);
        int y = top();
        for (const SummaryPart &part : m_parts)
            y = paintPart(sheet, part, y);
        sheet.rule(margin(), m_size.width() - margin(), foot());
        sheet.fittedWords(m_foot, tenths(34), tenths(22), PrintSheet::Plain,
                          {margin(), foot() + tenths(14), width(), tenths(100)},
                          m_in.fromTheRight());
    }

private:
    [[nodiscard]] int tenths(int ofA4) const { return qRound(ofA4 * m_unit); }
    [[nodiscard]] int margin() const { return tenths(150); }
    [[nodiscard]] int width() const { return m_size.width() - 2 * margin(); }
    [[nodiscard]] int top() const { return tenths(330); }
    [[nodiscard]] int foot() const { return m_size.height() - tenths(190); }
    [[nodiscard]] int headingPixels() const { return m_pixels + tenths(10); }
    [[nodiscard]] int indentWide() const { return tenths(60); }

    [[nodiscard]] int heightOf(const QString &text, int pixels, int style, int wide) const
    {
        return heightOfWords(text, pixels, style, wide, m_in.fromTheRight());
    }

    [[nodiscard]] int height() const
    {
        int height = 0;
        for (const SummaryPart &part : m_parts) {
            height += heightOf(part.heading, headingPixels(), PrintSheet::Bold, width());
            for (const SummaryLine &line : part.lines)
                height += heightOf(line.text, m_pixels, styleOf(line),
                                   width() - line.indent * indentWide()) +
                          tenths(6);
            height += tenths(44);
        }
        return height;
    }

    void paintHead(PrintSheet &sheet) const
    {
        sheet.fittedWords(m_in.tell(wording::summaryTitle(m_page.child)), tenths(84), tenths(40),
                          PrintSheet::Bold, {margin(), tenths(110), width(), tenths(110)},
                          m_in.fromTheRight());
        const QString when = m_in.tell(wording::summaryTime(m_page.since, m_page.day));
        const QString box = m_in.tell(wording::boxCodeLine(m_page.code)) +
                            QStringLiteral(", R%1").arg(m_page.revision);
        const QRect place{margin(), tenths(225), width(), tenths(50)};
        sheet.words(when, tenths(36), PrintSheet::Plain, place);
        sheet.words(box, tenths(36), PrintSheet::End, place);
        sheet.rule(margin(), m_size.width() - margin(), tenths(295));
    }

    int paintPart(PrintSheet &sheet, const SummaryPart &part, int y) const
    {
        const int high = m_size.height();
        y += sheet.words(part.heading, headingPixels(), PrintSheet::Bold,
                         {margin(), y, width(), high});
        for (const SummaryLine &line : part.lines) {
            const int indent = line.indent * indentWide();
            if (line.marked)
                sheet.picture(QStringLiteral("peg-mark"),
                              {margin(), y, indentWide() - tenths(14), m_pixels + tenths(12)});
            y += sheet.words(line.text, m_pixels, styleOf(line),
                             {margin() + indent, y, width() - indent, high}) +
                 tenths(6);
        }
        return y + tenths(44);
    }

    const usecase::SummaryPage &m_page;
    const PrintLanguage &m_in;
    QSize m_size;
    double m_unit;
    std::vector<SummaryPart> m_parts;
    QString m_foot;
    int m_pixels = 0;
};

} // namespace

PrintPage summaryPrint(const Summary &summary, const PrintLanguage &in, QSize size)
{
    return {size, [summary, in, size](QPainter &painter) {
                SummarySheet(summary, in, size).paint(painter);
            }};
}

} // namespace lidlark::mobile
