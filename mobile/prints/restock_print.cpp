#include "restock_print.h"

#include "core/wording/print_words.h"
#include "core/wording/request_words.h"
#include "core/wording/restock_words.h"
#include "mobile/bridge/letters.h"
#include "mobile/bridge/text.h"
#include "mobile/prints/print_sheet.h"

#include <algorithm>
#include <span>

namespace lidlark::mobile {

namespace {

constexpr int columns = 3; // boxes beside each other under their item

/// A page of the round.
class RestockSheet
{
public:
    RestockSheet(const usecase::RestockPage &restock, const PrintLanguage &in, QSize size)
        : m_restock(restock), m_in(in), m_size(size), m_unit(size.width() / 2100.0)
    {
    }

    /// How many of these items fit on one page, at least one.
    [[nodiscard]] std::size_t fitting(std::span<const usecase::RestockItem> items) const
    {
        int y = top();
        std::size_t count = 0;
        for (const usecase::RestockItem &item : items) {
            y += heightOf(item);
            if (y > foot() && count > 0)
                break;
            ++count;
        }
        return count;
    }

    void paint(QPainter &painter, std::span<const usecase::RestockItem> items) const
    {
        PrintSheet sheet(painter, m_size, m_in.fromTheRight());
        sheet.words(m_in.tell(wording::restockTitle()), tenths(84), PrintSheet::Bold,
                    {margin(), tenths(110), width(), tenths(110)});
        sheet.words(m_in.tell(m_restock.items.empty()
                                  ? wording::nothingToRestock()
                                  : wording::restockNote(m_restock.day, m_restock.boxes())),
                    tenths(40), PrintSheet::Plain, {margin(), tenths(225), width(), tenths(60)});
        int y = top();
        for (const usecase::RestockItem &item : items) {
            paintItem(sheet, item, y);
            y += heightOf(item);
        }
    }

private:
    [[nodiscard]] int tenths(int ofA4) const { return qRound(ofA4 * m_unit); }
    [[nodiscard]] int margin() const { return tenths(150); }
    [[nodiscard]] int width() const { return m_size.width() - 2 * margin(); }
    [[nodiscard]] int top() const { return tenths(320); }
    [[nodiscard]] int foot() const { return m_size.height() - tenths(120); }
    [[nodiscard]] int pictureWide() const { return tenths(140); }
    [[nodiscard]] int headHigh() const { return tenths(80); }
    [[nodiscard]] int boxHigh() const { return tenths(126); }
    [[nodiscard]] int heightOf(const usecase::RestockItem &item) const
    {
        const int rows = (static_cast<int>(item.boxes.size()) + columns - 1) / columns;
        return std::max(headHigh() + rows * boxHigh(), pictureWide()) + tenths(40);
    }

    void paintItem(PrintSheet &sheet, const usecase::RestockItem &item, int y) const
    {
        sheet.rule(margin(), m_size.width() - margin(), y - tenths(14));
        sheet.picture(m_in.drawingOf(item.item), {margin(), y, pictureWide(), pictureWide()});
        const int left = margin() + pictureWide() + tenths(30);
        const int wide = m_size.width() - margin() - left;
        sheet.words(m_in.title(item.item, item.pieces()), tenths(52), PrintSheet::Bold,
                    {left, y, wide, headHigh()});
        sheet.words(m_in.number(item.pieces()), tenths(60), PrintSheet::Bold | PrintSheet::End,
                    {left, y - tenths(6), wide, headHigh()});
        for (int i = 0; i < static_cast<int>(item.boxes.size()); ++i)
            paintBox(sheet, item.boxes[static_cast<std::size_t>(i)],
                     {left + i % columns * (wide / columns),
                      y + headHigh() + i / columns * boxHigh(), wide / columns, boxHigh()});
    }

    void paintBox(PrintSheet &sheet, const usecase::RestockBox &box, const QRect &place) const
    {
        const int side = tenths(52);
        sheet.square({place.left(), place.top() + tenths(4), side, side});
        const int left = place.left() + side + tenths(18);
        const int wide = place.right() - left - tenths(10);
        sheet.fittedWords(m_in.number(box.pieces) + QStringLiteral(" \u00d7 ") +
                              fromCore(box.child),
                          tenths(40), tenths(24), PrintSheet::Bold,
                          {left, place.top(), wide, tenths(54)}, m_in.fromTheRight());
        QString note = fromCore(box.code) + QStringLiteral(" · ") +
                       m_in.tell(wording::requestStepWord(box.step));
        if (!box.insteadOf.empty())
            note +=
                QStringLiteral(", ") + m_in.tell(wording::inPlaceOf(m_in.nameOf(box.insteadOf, 2)));
        sheet.fittedWords(note, tenths(28), tenths(22), PrintSheet::Plain,
                          {left, place.top() + tenths(52), wide, tenths(72)}, m_in.fromTheRight());
    }

    const usecase::RestockPage &m_restock;
    const PrintLanguage &m_in;
    QSize m_size;
    double m_unit;
};

} // namespace

PrintPages restockPrint(const usecase::RestockPage &restock, const PrintLanguage &in, QSize size)
{
    PrintPages pages;
    const RestockSheet sheet(restock, in, size);
    std::size_t from = 0;
    do {
        const std::span<const usecase::RestockItem> rest = std::span(restock.items).subspan(from);
        const std::size_t count = sheet.fitting(rest);
        pages.push_back({size, [restock, in, size, from, count](QPainter &painter) {
                             RestockSheet(restock, in, size)
                                 .paint(painter, std::span(restock.items).subspan(from, count));
                         }});
        from += count;
    } while (from < restock.items.size());
    return pages;
}

} // namespace lidlark::mobile
