#include "mobile/bridge/written_language.h"

#include <QCoreApplication>

#include "mobile/bridge/known_languages.h"
#include "mobile/bridge/whole_places.h"

namespace lidlark::mobile {

namespace {

const QString folder = QStringLiteral(":/lidlark/translations");

SpokenLanguage asWritten(const QString &code)
{
    if (code == spokenLanguage().code)
        return spokenLanguage();
    const KnownLanguage *known = knownLanguage(code);
    if (known == nullptr)
        return {};
    return {known->code, known->reviewed, known->arabicScript};
}

} // namespace

WrittenLanguage::WrittenLanguage(const QString &code) : m_language(asWritten(code))
{
    if (m_language.code == spokenLanguage().code)
        return;
    m_words = std::make_unique<QTranslator>();
    if (!m_words->load(QStringLiteral("lidlark_") + m_language.code, folder))
        qWarning("No words of %s are here.", qPrintable(m_language.code));
}

QString WrittenLanguage::unchecked() const
{
    const KnownLanguage *known = knownLanguage(m_language.code);
    return known != nullptr ? known->unchecked : QString();
}

QString WrittenLanguage::wordsFor(const char *key, int count) const
{
    if (!m_words)
        return QCoreApplication::translate("core", key, nullptr, count);
    const QString words = m_words->translate("core", key, nullptr, count);
    if (words.isEmpty()) // English has only what is counted; another language may lack a line
        return QString::fromUtf8(key);
    return m_language.rightToLeft ? withWholePlaces(words) : words;
}

} // namespace lidlark::mobile
