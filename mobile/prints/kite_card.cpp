#include "kite_card.h"

#include "mobile/prints/print_sheet.h"

#include "core/wording/kite_words.h"
#include "core/wording/play_words.h"
#include "core/wording/review_words.h"
#include "mobile/bridge/sentence.h"

#include <QCoreApplication>

#include <algorithm>

namespace lidlark::mobile::kitecard {

namespace {

using checkin::Kite;

constexpr int margin = 50;
constexpr int width = size.width() - 2 * margin;
constexpr int gap = 30;
// One scale for all pictures, so that every kite is the same paper at the same size.
constexpr double scale = 1.8;

constexpr QRect column(int left, int wide, int index, int count)
{
    constexpr int top = 160;
    constexpr int foot = 1215;
    const int high = (foot - top - (count - 1) * gap) / count;
    return {margin + left, top + index * (high + gap), wide, high};
}

QString drawingOf(Kite kite)
{
    return QStringLiteral("kite-") +
           QString::fromUtf8(checkin::kiteNames.of(kite).data(),
                             static_cast<qsizetype>(checkin::kiteNames.of(kite).size()));
}

void paintKite(PrintSheet &sheet, Kite kite, const QRect &place)
{
    constexpr int wordHigh = 80;
    sheet.frame(place);
    sheet.drawing(drawingOf(kite), place.adjusted(0, 12, 0, -wordHigh + 12), scale);
    sheet.words(translated(wording::kiteName(kite)), 46, PrintSheet::Bold | PrintSheet::Centred,
                {place.left(), place.bottom() - wordHigh, place.width(), wordHigh});
}

void paintHand(PrintSheet &sheet)
{
    constexpr QRect place{margin, 1245, width, 185};
    constexpr int handWide = 240;
    sheet.frame(place);
    sheet.drawing(QStringLiteral("hand"), {place.left(), place.top(), handWide, place.height()},
                  scale);
    sheet.words(
        translated(wording::handLine()), 50, PrintSheet::Bold | PrintSheet::Middle,
        {place.left() + handWide, place.top(), place.width() - handWide - gap, place.height()});
}

/// What stands on the adult's side and nowhere else.
struct BackWords {
    Q_DECLARE_TR_FUNCTIONS(KiteCard)
public:
    static QString forYou() { return tr("For you, before you play"); }
    static QString ownWords() { return tr("What we call it at home"); }
    static QStringList use()
    {
        return {tr("Clip a clothes peg on the picture. It stays while you play."),
                tr("Tape the two sides together at the top, and they stand."),
                tr("Laminated? Cut the sharp corners round."),
                tr("A toddler at home? No loose pieces.")};
    }
};

constexpr int headWide = 245;
constexpr int linesTop = 155;
constexpr int between = 24; ///< Under each line for the adult.
constexpr int usePixels = 33;
constexpr int noticePixels = 28;

/// How the adult's side is shared out: some languages need more room for the same.
struct Shares {
    int linePixels = 36;
    int rowHigh = 108; ///< Of each kite that has a line to write on.
};

int highOf(const wording::TogetherCard &card, int pixels, bool fromTheRight)
{
    return std::max(
        heightOfWords(translated(card.head), pixels, PrintSheet::Bold, headWide, fromTheRight),
        heightOfWords(translated(card.line), pixels, PrintSheet::Plain, width - headWide,
                      fromTheRight));
}

/// What is left for the three rows to write on.
int roomForRows(int linePixels, bool fromTheRight)
{
    constexpr int foot = 1425;
    constexpr int headings = 28 + 70 + 26 + 4;
    int room = foot - linesTop - headings;
    for (const wording::TogetherCard &card : wording::togetherCards())
        room -= highOf(card, linePixels, fromTheRight) + between;
    for (const QString &line : BackWords::use())
        room -= heightOfWords(line, usePixels, PrintSheet::Plain, width, fromTheRight) + 6;
    return room - heightOfWords(translated(wording::notYetChecked()), noticePixels,
                                PrintSheet::Plain, width, fromTheRight);
}

Shares sharedOut(bool fromTheRight)
{
    constexpr int leastRow = 84; // 8.4 mm to write in
    Shares shares;
    while (shares.linePixels > 28 && roomForRows(shares.linePixels, fromTheRight) < 3 * leastRow)
        --shares.linePixels;
    shares.rowHigh = std::min(shares.rowHigh, roomForRows(shares.linePixels, fromTheRight) / 3);
    return shares;
}

int paintAdultLines(PrintSheet &sheet, int pixels)
{
    int top = linesTop;
    for (const wording::TogetherCard &card : wording::togetherCards()) {
        const int high = highOf(card, pixels, sheet.fromTheRight());
        sheet.words(translated(card.head), pixels, PrintSheet::Bold, {margin, top, headWide, high});
        sheet.words(translated(card.line), pixels, PrintSheet::Plain,
                    {margin + headWide, top, width - headWide, high});
        top += high + between;
    }
    return top;
}

int paintOwnWords(PrintSheet &sheet, int top, int rowHigh)
{
    constexpr int pictureWide = 200;
    for (const Kite kite : {Kite::Resting, Kite::Steady, Kite::Whirling}) {
        sheet.drawing(drawingOf(kite), {margin, top, pictureWide, rowHigh - 12},
                      0.8 * rowHigh / Shares().rowHigh);
        sheet.line({margin + pictureWide + gap, top + rowHigh - 24},
                   {margin + width, top + rowHigh - 24});
        top += rowHigh;
    }
    return top;
}

} // namespace

void paintFront(QPainter &painter)
{
    constexpr int kitesWide = 620;
    constexpr int othersLeft = kitesWide + gap;
    PrintSheet sheet(painter, size);
    sheet.outline();
    sheet.words(translated(wording::kiteQuestion()), 66, PrintSheet::Bold | PrintSheet::Centred,
                {margin, 52, width, 100});
    int index = 0;
    for (const Kite kite : {Kite::Resting, Kite::Steady, Kite::Whirling})
        paintKite(sheet, kite, column(0, kitesWide, index++, 3));
    paintKite(sheet, Kite::Clouds, column(othersLeft, width - othersLeft, 0, 2));
    paintKite(sheet, Kite::Bag, column(othersLeft, width - othersLeft, 1, 2));
    paintHand(sheet);
}

void paintBack(QPainter &painter)
{
    PrintSheet sheet(painter, size);
    sheet.outline();
    sheet.words(BackWords::forYou(), 52, PrintSheet::Bold, {margin, 60, width, 80});
    const Shares shares = sharedOut(sheet.fromTheRight());
    int top = paintAdultLines(sheet, shares.linePixels) + 28;
    sheet.words(BackWords::ownWords(), 44, PrintSheet::Bold, {margin, top, width, 70});
    top = paintOwnWords(sheet, top + 70, shares.rowHigh) + 26;
    for (const QString &line : BackWords::use())
        top += sheet.words(line, usePixels, PrintSheet::Plain, {margin, top, width, 120}) + 6;
    sheet.words(translated(wording::notYetChecked()), noticePixels, PrintSheet::Plain,
                {margin, top + 4, width, 60});
}

PrintPages pages()
{
    return {{size, paintFront}, {size, paintBack}};
}

} // namespace lidlark::mobile::kitecard
