#pragma once

#include <QTranslator>

#include "mobile/bridge/tongue.h"

#include <memory>

namespace lidlark::mobile {

/// A language that something is written in beside the one the app speaks: a print for the other
/// parent. The app's own words stay as they are.
class WrittenLanguage : public Tongue
{
public:
    /// @param code of known_languages.h, or the one in force; anything else is English.
    explicit WrittenLanguage(const QString &code);

    [[nodiscard]] const SpokenLanguage &language() const override { return m_language; }
    /// "Not yet checked", in the language itself; empty where somebody has.
    [[nodiscard]] QString unchecked() const;

protected:
    [[nodiscard]] QString wordsFor(const char *key, int count) const override;

private:
    SpokenLanguage m_language;
    std::unique_ptr<QTranslator> m_words; ///< Null: the app's own are right.
};

} // namespace lidlark::mobile
