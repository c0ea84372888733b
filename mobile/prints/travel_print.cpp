#include "travel_print.h"

#include "core/wording/caution_words.h"
#include "core/wording/line_words.h"
#include "core/wording/print_words.h"
#include "core/wording/review_words.h"
#include "mobile/bridge/text.h"
#include "mobile/prints/print_sheet.h"

#include <algorithm>

namespace lidlark::mobile {

namespace {

constexpr std::size_t leastEntries = 15;
constexpr std::size_t cautionsSaid = 2; // the most serious, and when to stop (look.md 7)

/// An entry as it is read.
struct Entry {
    QString drawing;
    QString name;
    QString minutes;
    QString text;
    QString caution;
};

Entry entryOf(const safety::Admitted &admitted, const PrintLanguage &in)
{
    const catalogue::Activity &activity = admitted.activity();
    std::vector<wording::Sentence> cautions = wording::cautionsFor(admitted.cautions(), activity);
    cautions.resize(std::min(cautions.size(), cautionsSaid));
    cautions.insert(cautions.begin(),
                    wording::asSentence({wording::supervisionShort(admitted.supervision())}));
    return {fromCore(activity.picture.drawing), fromCore(activity.name),
            in.tell(wording::aboutMinutes(activity.minutes.total())), fromCore(activity.adultLine),
            in.tongue().guard(cautions)};
}

/// The page: two columns of entries where it is wide, all in one size of letters.
class TravelSheet
{
public:
    TravelSheet(const usecase::TravelPage &travel, const PrintLanguage &in, QSize size)
        : m_travel(travel), m_in(in), m_size(size), m_unit(size.width() / 2100.0)
    {
        for (const safety::Admitted &admitted : travel.entries)
            m_entries.push_back(entryOf(admitted, in));
        m_top = tenths(330);
        m_foot = size.height() - tenths(140);
        choosePixels();
    }

    void paint(QPainter &painter) const
    {
        PrintSheet sheet(painter, m_size, m_in.fromTheRight());
        paintHead(sheet);
        if (m_entries.empty())
            sheet.words(m_in.tell(wording::nothingToTravelWith()), tenths(44), PrintSheet::Plain,
                        {margin(), m_top, m_size.width() - 2 * margin(), tenths(200)});
        int column = 0;
        int y = m_top;
        for (const Entry &entry : m_entries) {
            const int high = heightOf(entry);
            if (y + high > m_foot && column == 0) {
                column = 1;
                y = m_top;
            }
            paintEntry(sheet, entry, left(column), y);
            y += high;
        }
        paintFoot(sheet);
    }

private:
    [[nodiscard]] int tenths(int ofA4) const { return qRound(ofA4 * m_unit); }
    [[nodiscard]] int margin() const { return tenths(110); }
    [[nodiscard]] int columnWide() const
    {
        return (m_size.width() - 2 * margin() - tenths(60)) / 2;
    }
    [[nodiscard]] int left(int column) const
    {
        return margin() + column * (columnWide() + tenths(60));
    }
    [[nodiscard]] int pictureWide() const { return tenths(150); }
    [[nodiscard]] int textWide() const { return columnWide() - pictureWide() - tenths(24); }
    [[nodiscard]] int heightOfText(const QString &text, int pixels, int style) const
    {
        return heightOfWords(text, pixels, style, textWide(), m_in.fromTheRight());
    }
    [[nodiscard]] int heightOf(const Entry &entry) const
    {
        const int words = heightOfText(entry.name, m_pixels + tenths(8), PrintSheet::Bold) +
                          heightOfText(entry.minutes, m_pixels, PrintSheet::Plain) +
                          heightOfText(entry.text, m_pixels, PrintSheet::Plain) +
                          heightOfText(entry.caution, m_pixels, PrintSheet::Bold);
        return std::max(words, pictureWide() + tenths(10)) + tenths(26);
    }

    [[nodiscard]] bool allFit() const
    {
        int column = 0;
        int y = m_top;
        for (const Entry &entry : m_entries) {
            const int high = heightOf(entry);
            if (y + high > m_foot) {
                ++column;
                y = m_top;
            }
            if (column > 1 || y + high > m_foot)
                return false;
            y += high;
        }
        return true;
    }

    /// First smaller letters, down to what is read at arm's length; then fewer entries; then
    /// smaller letters again.
    void choosePixels()
    {
        constexpr int least = 18;
        m_pixels = tenths(38);
        while (!allFit() && m_pixels > tenths(30))
            --m_pixels;
        while (!allFit() && m_entries.size() > leastEntries)
            m_entries.pop_back();
        while (!allFit() && m_pixels > least)
            --m_pixels;
    }

    void paintHead(PrintSheet &sheet) const
    {
        const int wide = m_size.width() - 2 * margin();
        sheet.words(m_in.tell(wording::travelTitle()), tenths(86), PrintSheet::Bold,
                    {margin(), tenths(90), wide, tenths(110)});
        sheet.words(m_in.tell(wording::travelNote()), tenths(40), PrintSheet::Plain,
                    {margin(), tenths(215), wide, tenths(60)});
        sheet.rule(margin(), m_size.width() - margin(), m_top - tenths(22));
    }

    void paintFoot(PrintSheet &sheet) const
    {
        const int wide = m_size.width() - 2 * margin();
        const QString note = m_in.tell(wording::travelMadeFor(m_travel.child, m_travel.day)) +
                             u' ' + m_in.tell(wording::notYetChecked());
        sheet.rule(margin(), m_size.width() - margin(), m_foot);
        sheet.fittedWords(note, tenths(30), tenths(20), PrintSheet::Plain,
                          {margin(), m_foot + tenths(12), wide, tenths(90)}, m_in.fromTheRight());
    }

    void paintEntry(PrintSheet &sheet, const Entry &entry, int x, int y) const
    {
        sheet.scene(entry.drawing, {x, y + tenths(10), pictureWide(), pictureWide()});
        const int textX = x + pictureWide() + tenths(24);
        const QRect place{textX, y, textWide(), heightOf(entry)};
        int down = sheet.words(entry.name, m_pixels + tenths(8), PrintSheet::Bold, place);
        down += sheet.words(entry.minutes, m_pixels, PrintSheet::Plain, place.translated(0, down));
        down += sheet.words(entry.text, m_pixels, PrintSheet::Plain, place.translated(0, down));
        sheet.words(entry.caution, m_pixels, PrintSheet::Bold, place.translated(0, down));
    }

    const usecase::TravelPage &m_travel;
    const PrintLanguage &m_in;
    QSize m_size;
    double m_unit;
    std::vector<Entry> m_entries;
    int m_top = 0;
    int m_foot = 0;
    int m_pixels = 0;
};

} // namespace

PrintPage travelPrint(const usecase::TravelPage &travel, const PrintLanguage &in, QSize size)
{
    return {size, [travel, in, size](QPainter &painter) {
                TravelSheet(travel, in, size).paint(painter);
            }};
}

} // namespace lidlark::mobile
