#include "label_print.h"

#include "core/wording/print_words.h"
#include "core/wording/take_out_words.h"
#include "mobile/bridge/text.h"
#include "mobile/prints/print_sheet.h"

namespace lidlark::mobile {

namespace {

constexpr int margin = 50;
constexpr int width = labelSize.width() - 2 * margin;

/// Whose it is and which box.
int paintName(PrintSheet &sheet, const usecase::LabelPage &label, const PrintLanguage &in)
{
    constexpr int nameHigh = 170;
    constexpr int codeHigh = 80;
    // Where nothing has to be kept away the picture has the room.
    const int pictureWide = label.avoided.empty() ? 270 : 150;
    sheet.picture(QStringLiteral("item-box"),
                  {margin + width - pictureWide, margin, pictureWide, pictureWide});
    sheet.fittedWords(fromCore(label.name), 125, 40, PrintSheet::Bold | PrintSheet::Middle,
                      {margin, margin - 15, width - pictureWide - 20, nameHigh}, in.fromTheRight());
    sheet.words(in.tell(wording::boxCodeLine(label.code)), 52, PrintSheet::Plain,
                {margin, margin + nameHigh - 25, width, codeHigh});
    return margin + nameHigh + codeHigh - 25;
}

/// "latex-free home", framed, in words and never as a sign alone.
void paintAvoided(PrintSheet &sheet, const usecase::LabelPage &label,
                  const PrintLanguages &languages, const QRect &place)
{
    QStringList lines;
    for (const PrintLanguage &in : languages) {
        std::vector<wording::Argument> words;
        for (const child::Avoided what : label.avoided)
            words.emplace_back(wording::homeLabelWord(what));
        lines.append(in.tell(wording::inList(std::move(words))));
    }
    sheet.frame(place);
    const int high = place.height() / static_cast<int>(lines.size());
    for (int i = 0; i < static_cast<int>(lines.size()); ++i) {
        const bool right = languages[static_cast<std::size_t>(i)].fromTheRight();
        sheet.fittedWords(
            lines[i], 58, 28, PrintSheet::Bold | PrintSheet::Middle | PrintSheet::Centred,
            {place.left() + 20, place.top() + i * high, place.width() - 40, high}, right);
    }
}

void paintContact(PrintSheet &sheet, const usecase::LabelPage &label, const PrintLanguage &in,
                  int top)
{
    if (label.contact.empty())
        return;
    sheet.rule(margin, margin + width, top);
    sheet.words(in.tell(wording::contactLead()), 30, PrintSheet::Plain,
                {margin, top + 8, width, 40});
    sheet.fittedWords(fromCore(label.contact), 40, 26, PrintSheet::Bold,
                      {margin, top + 48, width, 90}, in.fromTheRight());
}

} // namespace

PrintPage labelPrint(const usecase::LabelPage &label, const PrintLanguages &languages)
{
    return {
        labelSize, [label, languages](QPainter &painter) {
            const PrintLanguage &in = languages.front();
            PrintSheet sheet(painter, labelSize, in.fromTheRight());
            const int top = paintName(sheet, label, in) + 15;
            constexpr int contactTop = 440;
            if (!label.avoided.empty())
                paintAvoided(sheet, label, languages, {margin, top, width, contactTop - top - 25});
            paintContact(sheet, label, in, contactTop);
        }};
}

} // namespace lidlark::mobile
