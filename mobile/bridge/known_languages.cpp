#include "mobile/bridge/known_languages.h"

#include <QLocale>

#include <algorithm>

namespace lidlark::mobile {

const QList<KnownLanguage> &knownLanguages()
{
    static const QList<KnownLanguage> languages{
        {QStringLiteral("en"), QStringLiteral("English"), true, false, {}},
        {QStringLiteral("pl"), QStringLiteral("Polski"), false, false,
         QStringLiteral("Jeszcze niesprawdzone przez człowieka")},
        {QStringLiteral("ur"), QStringLiteral("اردو"), false, true,
         QStringLiteral("ابھی کسی انسان نے نہیں جانچا")},
    };
    return languages;
}

const KnownLanguage *knownLanguage(const QString &code)
{
    const QList<KnownLanguage> &languages = knownLanguages();
    const auto found = std::ranges::find(languages, code, &KnownLanguage::code);
    return found != languages.end() ? &*found : nullptr;
}

QString systemLanguage()
{
    const QString code = QLocale::languageToCode(QLocale::system().language());
    return knownLanguage(code) != nullptr ? code : knownLanguages().constFirst().code;
}

} // namespace lidlark::mobile
