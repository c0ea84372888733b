#pragma once

#include <QString>

namespace lidlark::mobile {

/// The language the app speaks, as far as its words go.
struct SpokenLanguage {
    QString code = QStringLiteral("en"); ///< "en", "pl", "ur", "pseudo".
    bool reviewed = true;                ///< A person has checked the translation.
    bool rightToLeft = false;
};

/// One for the whole program: English until somebody says otherwise.
const SpokenLanguage &spokenLanguage();
/// At start and when the language is switched, before any words are asked for again.
void setSpokenLanguage(SpokenLanguage language);

/// The sources are written in it, so nothing needs a translation.
bool speaksEnglish();

} // namespace lidlark::mobile
