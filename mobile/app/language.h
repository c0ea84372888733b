#pragma once

#include <QString>
#include <QTranslator>

#include <memory>

namespace lidlark::mobile {

/// The words, the reading direction and the numbers' and dates' form of the app, for as long as
/// this lives. English stands where a translation is missing.
class Language
{
public:
    /// @param code "en", "pl", "ur" or "pseudo"; anything else: the system's if we have it.
    explicit Language(const QString &code);
    ~Language();
    Language(const Language &) = delete;
    Language &operator=(const Language &) = delete;

    /// From now on another one. What is already on a screen must be asked for again.
    void speak(const QString &code);

private:
    QTranslator m_english; ///< One and many: "1 minute", "2 minutes".
    std::unique_ptr<QTranslator> m_words;
};

} // namespace lidlark::mobile
