#include "mobile/bridge/stretched.h"

#include "mobile/bridge/text.h"

#include <cmath>
#include <memory>

namespace lidlark::mobile {

namespace {

constexpr qreal longer = 0.4;

QString accented(QString text)
{
    const QString plain = QStringLiteral("aeiouAEIOU");
    const QString accents = QStringLiteral("áéíóúÁÉÍÓÚ");
    for (QChar &letter : text) {
        const qsizetype vowel = plain.indexOf(letter);
        if (vowel >= 0)
            letter = accents[vowel];
    }
    return text;
}

/// " nór tív sál ..." of that length.
QString padding(qsizetype length)
{
    const QString words = QStringLiteral(" nór tív sálá bém");
    return words.repeated(length / words.size() + 1).left(length);
}

void stretch(std::string &text)
{
    text = toCore(stretched(fromCore(text)));
}

void stretch(std::vector<std::string> &lines)
{
    for (std::string &line : lines)
        stretch(line);
}

template <class Line> void stretchTexts(std::vector<Line> &lines)
{
    for (Line &line : lines)
        stretch(line.text);
}

void stretch(catalogue::Activity &activity)
{
    for (std::string *text :
         {&activity.name, &activity.invite, &activity.adultLine, &activity.waysIn.oneHand,
          &activity.waysIn.seated, &activity.waysIn.lowVision, &activity.waysIn.noSpeech,
          &activity.waysIn.tiresFast})
        stretch(*text);
    stretchTexts(activity.steps);
    stretchTexts(activity.easier);
    stretchTexts(activity.harder);
    stretchTexts(activity.swaps);
    for (std::vector<std::string> *lines :
         {&activity.watchFor, &activity.stopWhen, &activity.say, &activity.putBack})
        stretch(*lines);
}

void stretch(catalogue::ItemKind &item)
{
    for (std::string *text : {&item.name, &item.one, &item.life.check})
        stretch(*text);
    stretch(item.care);
    stretch(item.life.rescue);
}

template <class Entry> std::vector<Entry> allStretched(const std::vector<Entry> &entries)
{
    std::vector<Entry> all = entries;
    for (std::size_t i = 0; i < all.size(); ++i) {
        all[i].inEnglish = std::make_shared<const Entry>(entries[i]);
        stretch(all[i]);
    }
    return all;
}

} // namespace

QString stretched(const QString &text)
{
    qsizetype end = text.size();
    while (end > 0 && (text[end - 1].isPunct() || text[end - 1].isSpace()))
        --end;
    if (end == 0)
        return text; // nothing but a mark
    const QString body = accented(text.left(end));
    const auto more = static_cast<qsizetype>(std::ceil(longer * static_cast<qreal>(text.size())));
    return body + padding(more) + text.mid(end);
}

catalogue::Catalogue stretched(const catalogue::Catalogue &english)
{
    return {allStretched(english.items()), allStretched(english.activities()), english.problems()};
}

} // namespace lidlark::mobile
