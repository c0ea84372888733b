#include "kite_card.h"

#include "mobile/prints/print_sheet.h"

#include "core/wording/kite_words.h"
#include "core/wording/play_words.h"
#include "core/wording/review_words.h"
#include "mobile/bridge/sentence.h"

#include <QCoreApplication>

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

int paintAdultLines(PrintSheet &sheet, int top)
{
    constexpr int headWide = 245;
    for (const wording::TogetherCard &card : wording::togetherCards()) {
        sheet.words(translated(card.head), 36, PrintSheet::Bold, {margin, top, headWide, 60});
        const int high = sheet.words(translated(card.line), 36, PrintSheet::Plain,
                                     {margin + headWide, top, width - headWide, 200});
        top += high + 24;
    }
    return top;
}

int paintOwnWords(PrintSheet &sheet, int top)
{
    constexpr int rowHigh = 108;
    constexpr int pictureWide = 200;
    for (const Kite kite : {Kite::Resting, Kite::Steady, Kite::Whirling}) {
        sheet.drawing(drawingOf(kite), {margin, top, pictureWide, rowHigh - 12}, 0.8);
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
    int top = paintAdultLines(sheet, 155) + 28;
    sheet.words(BackWords::ownWords(), 44, PrintSheet::Bold, {margin, top, width, 70});
    top = paintOwnWords(sheet, top + 70) + 26;
    for (const QString &line : BackWords::use())
        top += sheet.words(line, 33, PrintSheet::Plain, {margin, top, width, 120}) + 6;
    sheet.words(translated(wording::notYetChecked()), 28, PrintSheet::Plain,
                {margin, top + 4, width, 60});
}

PrintPages pages()
{
    return {{size, paintFront}, {size, paintBack}};
}

} // namespace lidlark::mobile::kitecard
