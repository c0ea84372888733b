#include "pack_paper.h"

#include "core/wording/pack_list_words.h"
#include "core/wording/pack_words.h"
#include "mobile/bridge/text.h"

#include <algorithm>
#include <array>

namespace lidlark::mobile {

namespace {

using workbench::LineState;
using workbench::PackBox;
using workbench::PackLine;

constexpr int lineHigh = 82;
constexpr int specialHigh = 94;
constexpr std::array ticksFrom{1190, 1545}; // of a special box: in, second look
constexpr int ticksWide = 335;

/// Code and child; of a special box the names over its squares.
struct BoxHead {
    PackPaper paper;
    PackBox box;

    [[nodiscard]] int height() const { return paper.page.tenths(box.special ? 196 : 112); }
    void paint(PrintSheet &sheet, int top) const
    {
        const RowedPage &page = paper.page;
        const int high = page.tenths(90);
        sheet.line({page.margin(), top + page.tenths(12)}, {page.right(), top + page.tenths(12)});
        sheet.fittedWords(fromCore(box.code), page.tenths(66), page.tenths(30),
                          PrintSheet::Bold | PrintSheet::Middle,
                          page.between(0, 420, top + page.tenths(20), high), page.fromTheRight());
        sheet.fittedWords(paper.whose(box.whose), page.tenths(50), page.tenths(28),
                          PrintSheet::Middle, page.between(440, 1200, top + page.tenths(20), high),
                          page.fromTheRight());
        if (!box.special) {
            sheet.words(paper.tell(wording::packedByLead()), page.tenths(30),
                        PrintSheet::Middle | PrintSheet::End,
                        page.between(1200, 1520, top + page.tenths(20), high));
            sheet.line({page.margin() + page.tenths(1540), top + page.tenths(96)},
                       {page.right(), top + page.tenths(96)});
            return;
        }
        sheet.fittedWords(paper.tell(wording::specialBox()), page.tenths(34), page.tenths(22),
                          PrintSheet::Middle, page.between(0, 1160, top + high, high),
                          page.fromTheRight());
        const std::array names{wording::inColumn(), wording::secondLookColumn()};
        for (std::size_t i = 0; i < names.size(); ++i)
            sheet.fittedWords(paper.tell(names.at(i)), page.tenths(34), page.tenths(20),
                              PrintSheet::Bold | PrintSheet::Middle,
                              page.between(ticksFrom.at(i), ticksFrom.at(i) + ticksWide,
                                           top + page.tenths(114), page.tenths(46)),
                              page.fromTheRight());
    }
};

/// Picture, number and name of one line.
void paintThing(PrintSheet &sheet, const PackPaper &paper, const PackLine &line, const QRect &place)
{
    const RowedPage &page = paper.page;
    const int side = page.tenths(80);
    const int gap = page.tenths(16);
    sheet.picture(paper.items.drawingOf(line.item),
                  {place.left(), place.top() + (place.height() - side) / 2, side, side});
    const int countWide = page.tenths(110);
    sheet.fittedWords(page.in().number(line.pieces), page.tenths(52), page.tenths(30),
                      PrintSheet::Bold | PrintSheet::Centred | PrintSheet::Middle,
                      {place.left() + side, place.top(), countWide, place.height()},
                      page.fromTheRight());
    const int left = place.left() + side + countWide + gap;
    QString name = paper.items.title(line.item, line.pieces, line.hand);
    if (const QString wrong = paper.wrongWith(line); !wrong.isEmpty())
        name += QChar::LineFeed + wrong;
    sheet.fittedWords(name, page.tenths(38), page.tenths(20), PrintSheet::Middle,
                      {left, place.top(), place.right() - left, place.height()},
                      page.fromTheRight());
}

/// Two lines of a usual box beside each other, or the last one alone.
struct LinePair {
    PackPaper paper;
    std::vector<PackLine> lines;

    [[nodiscard]] int height() const { return paper.page.tenths(lineHigh); }
    void paint(PrintSheet &sheet, int top) const
    {
        const RowedPage &page = paper.page;
        const int inset = (height() - page.tenths(packSquare)) / 2;
        for (int i = 0; i < static_cast<int>(lines.size()); ++i) {
            const PackLine &line = lines[static_cast<std::size_t>(i)];
            const QRect half = page.between(i * 950, i * 950 + 930, top, height());
            paper.square(sheet, half.left() + page.tenths(4), top + inset, line.isIn());
            paintThing(sheet, paper, line, half.adjusted(page.tenths(packSquare + 24), 0, 0, 0));
        }
    }
};

/// A line of a special box: a square and a place for initials, and the same for the second look.
struct SpecialLine {
    PackPaper paper;
    PackLine line;

    [[nodiscard]] int height() const { return paper.page.tenths(specialHigh); }
    void paint(PrintSheet &sheet, int top) const
    {
        const RowedPage &page = paper.page;
        sheet.rule(page.margin(), page.margin() + page.tenths(1160), top);
        paintThing(sheet, paper, line, page.between(0, 1160, top, height()));
        const int inset = (height() - page.tenths(packSquare)) / 2;
        const std::array done{line.isIn(), line.state == LineState::LookedOver};
        for (std::size_t i = 0; i < done.size(); ++i) {
            const QRect place =
                page.between(ticksFrom.at(i), ticksFrom.at(i) + ticksWide, top, height());
            paper.square(sheet, place.left(), top + inset, done.at(i));
            sheet.line({place.left() + page.tenths(packSquare + 26), top + height() - inset},
                       {place.right(), top + height() - inset});
        }
    }
};

QString calledOf(const PackPaper &paper, const PackBox &box)
{
    QStringList lines;
    const bool stopped = box.notReady == workbench::NotReady::Conflict ||
                         box.notReady == workbench::NotReady::Disputed;
    if (stopped)
        lines.append(paper.tell(wording::readyWords(box)));
    for (const wording::CalledLine &line : paper.called(box))
        lines.append(paper.told(line));
    for (const ItemId &item : box.takeOut)
        lines.append(paper.tell(wording::takeOutAgain(paper.items.nameOf(item))));
    return lines.join(QChar::LineFeed);
}

void addLines(RowedPrint &print, const PackBox &box, const PackPaper &paper, int head)
{
    const std::size_t step = box.special ? 1 : 2;
    for (std::size_t i = 0; i < box.lines.size(); i += step) {
        const bool last = i + step >= box.lines.size();
        if (box.special) {
            print.rows.push_back(rowOf(SpecialLine{paper, box.lines[i]}, head, !last));
            continue;
        }
        const auto from = box.lines.begin() + static_cast<std::ptrdiff_t>(i);
        const auto to = last ? box.lines.end() : from + 2;
        print.rows.push_back(rowOf(LinePair{paper, {from, to}}, head, !last));
    }
}

} // namespace

void addPackBoxes(RowedPrint &print, const usecase::PackListPage &list, const PackPaper &paper)
{
    for (const PackBox &box : list.boxes) {
        const int head = static_cast<int>(print.heads.size());
        print.heads.push_back(rowOf(BoxHead{paper, box}));
        if (const QString called = calledOf(paper, box); !called.isEmpty())
            print.rows.push_back(rowOf(CalledRow(paper.page, called), head, !box.lines.empty()));
        addLines(print, box, paper, head);
    }
}

} // namespace lidlark::mobile
