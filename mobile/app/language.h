#pragma once

#include <QString>
#include <QTranslator>

namespace lidlark::mobile {

/// The words and the reading direction of the app, for as long as this lives. English stands where
/// a translation is missing.
class Language
{
public:
    /// @param code "ur"; empty: the system's.
    explicit Language(const QString &code);

private:
    QTranslator m_english; ///< One and many: "1 minute", "2 minutes".
    QTranslator m_translator;
};

} // namespace lidlark::mobile
