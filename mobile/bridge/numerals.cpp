#include "mobile/bridge/numerals.h"

#include "mobile/bridge/spoken_language.h"

#include <algorithm>

namespace lidlark::mobile {

namespace {

constexpr char16_t urduZero = u'\u06F0';

bool isDigit(QChar letter)
{
    return letter >= u'0' && letter <= u'9';
}

/// Where the run of letters and digits that begins at @p from ends.
qsizetype endOfWord(const QString &text, qsizetype from)
{
    while (from < text.size() && text[from].isLetterOrNumber())
        ++from;
    return from;
}

} // namespace

QString numerals(const QString &text)
{
    return numerals(text, spokenLanguage().code);
}

QString numerals(const QString &text, const QString &code)
{
    if (code != QLatin1String("ur"))
        return text;
    QString written = text;
    for (qsizetype at = 0; at < text.size();) {
        const qsizetype end = endOfWord(text, at);
        const QStringView word = QStringView(text).mid(at, end - at);
        if (std::all_of(word.begin(), word.end(), isDigit)) {
            for (qsizetype i = at; i < end; ++i)
                written[i] = QChar(static_cast<char16_t>(urduZero + text[i].unicode() - u'0'));
        }
        at = end + 1;
    }
    return written;
}

QString numerals(int number)
{
    return numerals(QString::number(number));
}

} // namespace lidlark::mobile
