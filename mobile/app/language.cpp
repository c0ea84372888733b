#include "language.h"

#include <QGuiApplication>
#include <QLocale>

// The words lie in a library of their own, which nothing else would pull in.
static void openWords()
{
    Q_INIT_RESOURCE(lidlark_words);
}

namespace lidlark::mobile {

Language::Language(const QString &code)
{
    openWords();
    const QLocale locale = code.isEmpty() ? QLocale() : QLocale(code);
    const QString folder = QStringLiteral(":/lidlark/translations");
    QLocale::setDefault(locale);
    QGuiApplication::setLayoutDirection(locale.textDirection());
    if (m_english.load(QStringLiteral("lidlark_en"), folder))
        QCoreApplication::installTranslator(&m_english);
    if (locale.language() != QLocale::English &&
        m_translator.load(locale, QStringLiteral("lidlark"), QStringLiteral("_"), folder))
        QCoreApplication::installTranslator(&m_translator);
}

} // namespace lidlark::mobile
