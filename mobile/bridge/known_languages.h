#pragma once

#include <QList>
#include <QString>

namespace lidlark::mobile {

/// A language the app can be read in.
struct KnownLanguage {
    QString code;      ///< ISO 639-1.
    QString ownName;   ///< "Polski".
    bool reviewed;     ///< Somebody who speaks it has checked the words, or they are the original.
    bool arabicScript; ///< Set in Naskh, read from right to left.
    QString unchecked; ///< "Not yet checked", in the language itself; empty where it is reviewed.
};

/// English first. To review a language is to change its line here; each page of the catalogue says
/// for itself whether it is reviewed.
const QList<KnownLanguage> &knownLanguages();

/// @returns null for a language we do not have.
const KnownLanguage *knownLanguage(const QString &code);

/// The system's language if it is one of ours, else English.
QString systemLanguage();

/// English, stretched, for looking at screens: only the command line asks for it.
inline constexpr auto stretchedLanguage = "pseudo";

} // namespace lidlark::mobile
