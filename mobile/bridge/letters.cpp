#include "mobile/bridge/letters.h"

#include "mobile/bridge/spoken_language.h"

namespace lidlark::mobile {

namespace {

constexpr QChar leftToRightIsolate(u'\u2066');
constexpr QChar firstStrongIsolate(u'\u2068');
constexpr QChar popIsolate(u'\u2069');

/// Past the isolates that a name at the beginning stands in.
qsizetype firstLetter(const QString &text)
{
    qsizetype at = 0;
    while (at < text.size() && (text[at] == firstStrongIsolate || text[at] == leftToRightIsolate))
        ++at;
    return at;
}

QString between(QChar opening, const QString &text, bool rightToLeft)
{
    return !rightToLeft || text.isEmpty() ? text : opening + text + popIsolate;
}

} // namespace

QString capitalised(const QString &text)
{
    const qsizetype at = firstLetter(text);
    return text.left(at) + text.mid(at, 1).toUpper() + text.mid(at + 1);
}

QString uncapitalised(const QString &text)
{
    const qsizetype at = firstLetter(text);
    return text.left(at) + text.mid(at, 1).toLower() + text.mid(at + 1);
}

QString isolated(const QString &text)
{
    return isolated(text, spokenLanguage().rightToLeft);
}

QString isolated(const QString &text, bool rightToLeft)
{
    return between(firstStrongIsolate, text, rightToLeft);
}

QString isolatedEnglish(const QString &text)
{
    return isolatedEnglish(text, spokenLanguage().rightToLeft);
}

QString isolatedEnglish(const QString &text, bool rightToLeft)
{
    return between(leftToRightIsolate, text, rightToLeft);
}

} // namespace lidlark::mobile
