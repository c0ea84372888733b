#include "mobile/bridge/safety_words.h"

#include <QCoreApplication>

#include "mobile/bridge/letters.h"
#include "mobile/bridge/spoken_language.h"

namespace lidlark::mobile {

QString SafetyWords::of(const QString &english)
{
    const QString words = QCoreApplication::translate("SafetyWords", english.toUtf8().constData());
    const bool alone = spokenLanguage().reviewed || words == english;
    return alone ? words : words + u'\n' + isolatedEnglish(english);
}

QString SafetyWords::about(const QString &english, const QString &name)
{
    return of(english).replace(QLatin1String("%1"), isolated(name));
}

} // namespace lidlark::mobile
