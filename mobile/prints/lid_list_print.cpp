#include "lid_list_print.h"

#include "core/wording/print_words.h"
#include "mobile/prints/print_sheet.h"

#include <algorithm>

namespace lidlark::mobile {

namespace {

/// One card of the list, with its measures: those of A6 made larger for a larger card.
class LidCard
{
public:
    LidCard(QPainter &painter, QSize size, const usecase::LidListPage &list,
            const PrintLanguages &languages)
        : m_sheet(painter, size, languages.size() == 1 && languages.front().fromTheRight()),
          m_list(list), m_languages(languages),
          m_unit(std::min(size.width() / 1050.0, size.height() / 1480.0))
    {
        // Whatever was asked for first: from the left at the left.
        std::stable_partition(m_languages.begin(), m_languages.end(),
                              [](const PrintLanguage &one) { return !one.fromTheRight(); });
    }

    void paint(const std::vector<usecase::LidLine> &lines, int card, int cards)
    {
        const int top = paintHead(card, cards);
        const int foot = paintFoot();
        const int high =
            std::min((foot - top) / std::max(1, static_cast<int>(lines.size())), tenths(125));
        measure(lines, high);
        for (std::size_t i = 0; i < lines.size(); ++i) {
            const int y = top + static_cast<int>(i) * high;
            if (i > 0)
                m_sheet.rule(margin(), right(), y);
            paintLine(lines[i], y, high);
        }
    }

private:
    [[nodiscard]] int tenths(int ofA6) const { return qRound(ofA6 * m_unit); }
    [[nodiscard]] int margin() const { return tenths(55); }
    [[nodiscard]] int right() const { return m_sheet.size().width() - margin(); }
    [[nodiscard]] int width() const { return right() - margin(); }
    [[nodiscard]] bool two() const { return m_languages.size() > 1; }
    [[nodiscard]] bool countsTwice() const
    {
        return two() && m_languages[0].countsOtherwiseThan(m_languages[1]);
    }
    /// The room of a language's words.
    [[nodiscard]] QRect column(std::size_t index, int top, int high, int left, int end) const
    {
        if (!two())
            return {left, top, end - left, high};
        const int gap = tenths(24);
        const int wide = (end - left - gap) / 2;
        return {index == 0 ? left : end - wide, top, wide, high};
    }

    int paintHead(int card, int cards)
    {
        int y = margin();
        const int title = tenths(78);
        const int under = tenths(72);
        for (std::size_t i = 0; i < m_languages.size(); ++i) {
            const PrintLanguage &in = m_languages[i];
            m_sheet.fittedWords(in.tell(wording::boxOf(m_list.child)), tenths(60), tenths(30),
                                PrintSheet::Bold, column(i, y, title, margin(), right()),
                                in.fromTheRight());
            QString line = in.tell(wording::lidListLine(m_list.revision, m_list.issued));
            if (cards > 1)
                line += QStringLiteral(". ") + in.tell(wording::cardOf(card, cards));
            m_sheet.fittedWords(line, tenths(33), tenths(24), PrintSheet::Plain,
                                column(i, y + title, under, margin(), right()), in.fromTheRight());
        }
        y += title + (two() ? under : tenths(50));
        m_sheet.rule(margin(), right(), y);
        return y + tenths(4);
    }

    int paintFoot()
    {
        const bool anyUnchecked = std::ranges::any_of(
            m_languages, [](const PrintLanguage &in) { return !in.unchecked().isEmpty(); });
        const int note = anyUnchecked ? tenths(34) : 0;
        const int say = tenths(two() ? 72 : 52);
        const int out = m_list.keptOut.empty() ? 0 : tenths(two() ? 96 : 56);
        int top = m_sheet.size().height() - tenths(44) - say - note - out;
        const int foot = top;
        m_sheet.rule(margin(), right(), top);
        for (std::size_t i = 0; i < m_languages.size() && out > 0; ++i)
            m_sheet.fittedWords(keptOutIn(m_languages[i]), tenths(32), tenths(20),
                                PrintSheet::Plain,
                                column(i, top + tenths(8), out - tenths(8), margin(), right()),
                                m_languages[i].fromTheRight());
        top += out;
        for (std::size_t i = 0; i < m_languages.size(); ++i) {
            const PrintLanguage &in = m_languages[i];
            m_sheet.fittedWords(
                in.tell(wording::countHomeLine()), tenths(34), tenths(22), PrintSheet::Bold,
                column(i, top + tenths(8), say - tenths(8), margin(), right()), in.fromTheRight());
            m_sheet.fittedWords(in.unchecked(), tenths(24), tenths(18), PrintSheet::Plain,
                                noteRoom(i, top + say, note), in.fromTheRight());
        }
        paintCode(top + say + (anyUnchecked ? 0 : -tenths(38)));
        return foot - tenths(4);
    }

    /// What the code of the box leaves of the lowest line.
    [[nodiscard]] QRect noteRoom(std::size_t index, int top, int high) const
    {
        const QRect room = column(index, top, high, margin(), right());
        if (!two() || index == 0)
            return room;
        const int code = tenths(84);
        return m_languages[index].fromTheRight() ? room.adjusted(code, 0, 0, 0)
                                                 : room.adjusted(0, 0, -code, 0);
    }

    /// Across from where the last language's words begin.
    void paintCode(int top)
    {
        const bool before = two() && m_languages.back().fromTheRight();
        m_sheet.words(QString::fromStdString(m_list.code), tenths(24),
                      before ? PrintSheet::Plain : PrintSheet::End,
                      column(m_languages.size() - 1, top, 0, margin(), right()),
                      m_sheet.fromTheRight());
    }

    [[nodiscard]] QString keptOutIn(const PrintLanguage &in) const
    {
        std::vector<wording::Argument> names;
        for (const ItemId &item : m_list.keptOut)
            names.push_back(in.nameOf(item, 2));
        // Words nobody has checked have the English under them, unless it stands beside them.
        const bool beside = std::ranges::any_of(m_languages, [](const PrintLanguage &one) {
            return one.tongue().language().code == QLatin1String("en");
        });
        const wording::Sentence line = wording::keptOutLine(std::move(names));
        return beside ? in.tell(line) : in.tongue().guard({line});
    }

    /// One size of letters for all lines: the largest in which each finds room.
    void measure(const std::vector<usecase::LidLine> &lines, int high)
    {
        std::size_t most = 1;
        for (const usecase::LidLine &line : lines)
            most = std::max(most, line.parts.size());
        m_picture = high - tenths(6);
        // Beside two languages' names there is no room for two pictures in full.
        m_pictures =
            most > 1 && two() ? m_picture * 3 / 2 : static_cast<int>(most) * m_picture + tenths(12);
        m_count = tenths(most > 1 && !two() ? 108 : 88);
        m_gap = tenths(20);
        m_pixels = tenths(two() ? 40 : 50);
        for (const usecase::LidLine &line : lines) {
            for (std::size_t i = 0; i < m_languages.size(); ++i)
                m_pixels = std::min(m_pixels, fittingPixels(namesIn(m_languages[i], line), m_pixels,
                                                            tenths(24), PrintSheet::Plain,
                                                            nameRoom(i, 0, high).size(),
                                                            m_languages[i].fromTheRight()));
        }
    }

    [[nodiscard]] QRect nameRoom(std::size_t index, int top, int high) const
    {
        const int left = margin() + m_pictures + m_count + m_gap;
        return column(index, top, high, left, right() - (countsTwice() ? m_count + m_gap : 0));
    }

    static QString namesIn(const PrintLanguage &in, const usecase::LidLine &line)
    {
        std::vector<wording::Argument> names;
        for (const usecase::LidPart &part : line.parts) {
            wording::Argument name = in.nameOf(part.item, part.pieces);
            names.push_back(names.empty() ? wording::withCapital(std::move(name))
                                          : std::move(name));
        }
        return in.tell(wording::inList(std::move(names)));
    }

    static QString countsIn(const PrintLanguage &in, const usecase::LidLine &line)
    {
        QStringList counts;
        for (const usecase::LidPart &part : line.parts)
            counts.append(in.number(part.pieces));
        return counts.join(QStringLiteral("\u00a0+\u00a0")); // on one line
    }

    void paintCount(const PrintLanguage &in, const usecase::LidLine &line, const QRect &place)
    {
        const int apart = line.parts.size() > 1 ? tenths(10) : 0; // from pictures and names
        m_sheet.fittedWords(countsIn(in, line), tenths(58), tenths(30),
                            PrintSheet::Bold | PrintSheet::Middle | PrintSheet::Centred,
                            place.adjusted(apart, 0, -apart, 0), in.fromTheRight());
    }

    void paintLine(const usecase::LidLine &line, int top, int high)
    {
        const int parts = static_cast<int>(line.parts.size());
        const int side = std::min(m_picture, m_pictures / std::max(1, parts));
        int x = margin() + (m_pictures - parts * side) / 2;
        for (const usecase::LidPart &part : line.parts) {
            m_sheet.picture(m_languages[0].drawingOf(part.item),
                            {x, top + (high - side) / 2, side, side});
            x += side;
        }
        paintCount(m_languages[0], line, {margin() + m_pictures, top, m_count, high});
        if (countsTwice())
            paintCount(m_languages[1], line, {right() - m_count, top, m_count, high});
        for (std::size_t i = 0; i < m_languages.size(); ++i)
            m_sheet.words(namesIn(m_languages[i], line), m_pixels, PrintSheet::Middle,
                          nameRoom(i, top, high), m_languages[i].fromTheRight());
    }

    PrintSheet m_sheet;
    const usecase::LidListPage &m_list;
    PrintLanguages m_languages;
    double m_unit;
    int m_picture = 0;
    int m_pictures = 0;
    int m_count = 0;
    int m_gap = 0;
    int m_pixels = 0;
};

} // namespace

PrintPages lidListPrint(const usecase::LidListPage &list, const PrintLanguages &languages,
                        QSize size)
{
    PrintPages pages;
    const auto cards = list.cards();
    for (std::size_t i = 0; i < cards.size(); ++i) {
        pages.push_back({size, [list, languages, size, lines = cards[i], card = i + 1,
                                of = cards.size()](QPainter &painter) {
                             LidCard(painter, size, list, languages)
                                 .paint(lines, static_cast<int>(card), static_cast<int>(of));
                         }});
    }
    return pages;
}

} // namespace lidlark::mobile
