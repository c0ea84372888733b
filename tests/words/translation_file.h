#pragma once

#include "tests/words/source_key.h"

#include <QStringList>

#include <vector>

namespace lidlark::words {

/// One message of a translation file (Qt Linguist's .ts format).
struct Translated {
    SourceKey key;
    QStringList forms; ///< One, or as many as the language has for numbers.
    bool unfinished = false;
};

struct TranslationFile {
    QString language; ///< "pl".
    std::vector<Translated> messages;
    QString problem; ///< Why the file could not be read; empty: it could.
};

/// How many forms a number asks for. Source: Qt Linguist Manual, "Translation Rules for Plural
/// Forms".
int formsOf(const QString &language);

TranslationFile readTranslations(const QString &path);
/// @returns false when it could not be written.
bool writeTranslations(const QString &path, const TranslationFile &file);

/// The same translations for the keys there are now: a new one is unfinished and empty, one that
/// nothing says any more is dropped.
TranslationFile broughtUpToDate(const TranslationFile &file, const std::vector<SourceKey> &keys);

} // namespace lidlark::words
