#include "language.h"

#include <QGuiApplication>
#include <QLocale>

#include "mobile/bridge/known_languages.h"
#include "right_to_left_words.h"
#include "stretched_words.h"

// The words lie in a library of their own, which nothing else would pull in.
static void openWords()
{
    Q_INIT_RESOURCE(lidlark_words);
}

namespace lidlark::mobile {

namespace {

const QString folder = QStringLiteral(":/lidlark/translations");

/// Of a language that is the system's, the system's country decides about dates. English words
/// beside another system's dates would be two languages on one line.
QLocale localeOf(const QString &code)
{
    const QLocale system = QLocale::system();
    const QLocale own(code);
    if (system.language() == own.language())
        return system;
    if (own.language() != QLocale::English)
        return own;
    return system.language() == QLocale::C ? system
                                           : QLocale(QLocale::English, QLocale::UnitedKingdom);
}

std::unique_ptr<QTranslator> wordsOf(const QString &code, const QTranslator &english)
{
    if (code == QLatin1String(stretchedLanguage))
        return std::make_unique<StretchedWords>(english);
    const KnownLanguage *known = knownLanguage(code);
    const bool fromTheRight = known != nullptr && known->arabicScript;
    std::unique_ptr<QTranslator> words =
        fromTheRight ? std::make_unique<RightToLeftWords>() : std::make_unique<QTranslator>();
    const bool there = code != knownLanguages().constFirst().code &&
                       words->load(QStringLiteral("lidlark_") + code, folder);
    return there ? std::move(words) : nullptr;
}

} // namespace

Language::Language(const QString &code)
{
    openWords();
    if (m_english.load(QStringLiteral("lidlark_en"), folder))
        QCoreApplication::installTranslator(&m_english);
    speak(code);
}

Language::~Language() = default; // a translator takes itself off

void Language::speak(const QString &code)
{
    const bool stretch = code == QLatin1String(stretchedLanguage);
    const QString spoken = stretch || knownLanguage(code) != nullptr ? code : systemLanguage();
    const QLocale locale = localeOf(stretch ? knownLanguages().constFirst().code : spoken);
    QLocale::setDefault(locale);
    QGuiApplication::setLayoutDirection(locale.textDirection());
    m_words = wordsOf(spoken, m_english);
    if (m_words)
        QCoreApplication::installTranslator(m_words.get());
}

} // namespace lidlark::mobile
