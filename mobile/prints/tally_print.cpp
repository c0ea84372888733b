#include "tally_print.h"

#include "core/wording/emergency_words.h"
#include "core/wording/floor_words.h"
#include "core/wording/line_words.h"
#include "core/wording/play_words.h"
#include "core/wording/print_words.h"
#include "core/wording/tally_words.h"
#include "mobile/bridge/letters.h"
#include "mobile/bridge/text.h"
#include "mobile/prints/print_sheet.h"

#include <algorithm>
#include <array>

namespace lidlark::mobile {

namespace {

using box::ExceptionKind;

constexpr std::array kinds{ExceptionKind::UsedUp, ExceptionKind::Lost, ExceptionKind::Broken,
                           ExceptionKind::DriedOut};

/// The page, in measures of A4.
class TallySheet
{
public:
    TallySheet(QPainter &painter, QSize size, const usecase::TallyPage &tally,
               const PrintLanguage &in)
        : m_sheet(painter, size, in.fromTheRight()), m_tally(tally), m_in(in),
          m_unit(std::min(size.width() / 2100.0, size.height() / 2794.0))
    {
    }

    void paint()
    {
        const int top = paintHead();
        const int foot = paintFoot();
        const int rows = std::max(1, static_cast<int>(m_tally.lines.size()));
        const int high = std::min((foot - top - tenths(12)) / rows, tenths(150));
        m_pixels = tenths(42);
        for (const usecase::TallyLine &line : m_tally.lines)
            m_pixels = std::min(m_pixels,
                                fittingPixels(nameOf(line), m_pixels, tenths(26), PrintSheet::Plain,
                                              nameRoom(0, high).size(), m_in.fromTheRight()));
        for (int row = 0; row < static_cast<int>(m_tally.lines.size()); ++row)
            paintLine(m_tally.lines[static_cast<std::size_t>(row)], top + row * high, high);
    }

private:
    [[nodiscard]] int tenths(int ofA4) const { return qRound(ofA4 * m_unit); }
    [[nodiscard]] int margin() const { return tenths(110); }
    [[nodiscard]] int right() const { return m_sheet.size().width() - margin(); }
    [[nodiscard]] int width() const { return right() - margin(); }
    [[nodiscard]] int columnWide() const { return tenths(205); }
    /// Of the squares, counted from the end: used up, lost, broken, dried out, counted.
    [[nodiscard]] int columnLeft(int column) const
    {
        return right() - (static_cast<int>(kinds.size()) + 1 - column) * columnWide();
    }
    [[nodiscard]] QRect nameRoom(int top, int high) const
    {
        const int left = margin() + tenths(130);
        return {left, top, columnLeft(0) - listedWide() - left - tenths(10), high};
    }
    [[nodiscard]] int listedWide() const { return tenths(140); }
    [[nodiscard]] QString nameOf(const usecase::TallyLine &line) const
    {
        return m_in.title(line.part.item, line.part.pieces);
    }

    int paintHead()
    {
        int y = tenths(80);
        const int half = width() / 2;
        m_sheet.fittedWords(m_in.tell(wording::boxOf(m_tally.child)), tenths(84), tenths(40),
                            PrintSheet::Bold | PrintSheet::Middle,
                            {margin(), y, half - tenths(40), tenths(110)}, m_in.fromTheRight());
        m_sheet.fittedWords(m_in.tell(wording::tallyWeek(m_tally.monday)), tenths(46), tenths(30),
                            PrintSheet::Bold | PrintSheet::End | PrintSheet::Middle,
                            {margin() + half, y, half, tenths(110)}, m_in.fromTheRight());
        y += tenths(118);
        const QString list = m_in.tell(wording::lidListLine(m_tally.revision, m_tally.issued));
        const QString code = m_in.tell(wording::boxCodeLine(m_tally.code));
        m_sheet.words(list, tenths(34), PrintSheet::Plain, {margin(), y, width(), tenths(50)});
        m_sheet.words(code, tenths(34), PrintSheet::End, {margin(), y, width(), tenths(50)});
        y += tenths(62);
        y += m_sheet.words(m_in.tell(wording::tallyNote()), tenths(38), PrintSheet::Plain,
                           {margin(), y, width(), tenths(120)}) +
             tenths(16);
        paintColumnNames(y);
        return y + tenths(96);
    }

    void paintColumnNames(int y)
    {
        constexpr int style = PrintSheet::Bold | PrintSheet::Centred | PrintSheet::Middle;
        const auto name = [&](const wording::Sentence &words, int left, int wide) {
            m_sheet.fittedWords(capitalised(m_in.tell(words)), tenths(34), tenths(22), style,
                                {left, y, wide, tenths(92)}, m_in.fromTheRight());
        };
        name(wording::tallyListed(), columnLeft(0) - listedWide(), listedWide());
        for (int i = 0; i < static_cast<int>(kinds.size()); ++i)
            name(wording::exceptionWord(kinds.at(static_cast<std::size_t>(i))), columnLeft(i),
                 columnWide());
        name(wording::tallyCounted(), columnLeft(static_cast<int>(kinds.size())), columnWide());
    }

    void paintLine(const usecase::TallyLine &line, int top, int high)
    {
        m_sheet.rule(margin(), right(), top);
        const int side = std::min(high - tenths(10), tenths(118));
        m_sheet.picture(m_in.drawingOf(line.part.item),
                        {margin(), top + (high - side) / 2, tenths(118), side});
        m_sheet.words(nameOf(line), m_pixels, PrintSheet::Middle, nameRoom(top, high));
        m_sheet.words(m_in.number(line.part.pieces), tenths(54),
                      PrintSheet::Bold | PrintSheet::Centred | PrintSheet::Middle,
                      {columnLeft(0) - listedWide(), top, listedWide(), high});
        const int inset = tenths(12);
        for (int column = 0; column <= static_cast<int>(kinds.size()); ++column) {
            const bool dried = column == static_cast<int>(kinds.size()) - 1;
            m_sheet.square({columnLeft(column) + inset, top + inset, columnWide() - 2 * inset,
                            high - 2 * inset},
                           dried && !line.mayDryOut);
        }
    }

    /// @returns where it begins.
    int paintFoot()
    {
        const QString lost = lostWords();
        const int most = tenths(230);
        const int lostHigh = lost.isEmpty()
                                 ? 0
                                 : std::min(most, heightOfWords(lost, tenths(34), PrintSheet::Bold,
                                                                width(), m_in.fromTheRight())) +
                                       tenths(14);
        const int top = m_sheet.size().height() - tenths(80) - tenths(230) - lostHigh;
        m_sheet.rule(margin(), right(), top);
        int y = top + tenths(10);
        m_sheet.fittedWords(lost, tenths(34), tenths(26), PrintSheet::Bold,
                            {margin(), y, width(), lostHigh}, m_in.fromTheRight());
        y += lostHigh;
        m_sheet.words(m_in.tell(wording::tallyElse()), tenths(36), PrintSheet::Plain,
                      {margin(), y, width(), tenths(50)});
        for (int line = 1; line <= 2; ++line) {
            const int at = y + tenths(40 + line * 66);
            m_sheet.line({margin(), at}, {right(), at});
        }
        m_sheet.words(m_in.tell(wording::tallyVisit()), tenths(32), PrintSheet::Plain,
                      {margin(), y + tenths(182), width(), tenths(50)});
        return top;
    }

    /// What the app does for a home with a phone (job.md scenario 5), on a few lines.
    [[nodiscard]] QString lostWords() const
    {
        if (!m_tally.smallPieces)
            return {};
        std::vector<wording::Sentence> words{wording::tallyLostLead(), wording::lookAtHandsFirst(),
                                             wording::lookNow(false), wording::keepAway({}),
                                             wording::ifSwallowed()};
        if (!m_tally.emergencyNumber.empty())
            words.push_back(wording::asSentence({wording::callNumber(m_tally.emergencyNumber)}));
        if (!m_tally.poisonLine.empty())
            words.push_back(wording::asSentence({wording::callPoisonLine(m_tally.poisonLine)}));
        return m_in.tongue().guard(words);
    }

    PrintSheet m_sheet;
    const usecase::TallyPage &m_tally;
    const PrintLanguage &m_in;
    double m_unit;
    int m_pixels = 0;
};

} // namespace

PrintPage tallyPrint(const usecase::TallyPage &tally, const PrintLanguage &in, QSize size)
{
    return {size,
            [tally, in, size](QPainter &painter) { TallySheet(painter, size, tally, in).paint(); }};
}

} // namespace lidlark::mobile
