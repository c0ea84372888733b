#pragma once

#include "tests/words/translation_file.h"

namespace lidlark::words {

/// What is wrong with a language's file, a line each; empty: nothing.
///
/// Every key is there once, and no other; a number has as many forms as the language; a message
/// without words is marked unfinished; each form has the places (%1 to %9, %n) of its key; and none
/// is still English where the English has a word of four letters or more, unless @p sameInEnglish
/// names the key.
QStringList problemsWith(const TranslationFile &file, const std::vector<SourceKey> &keys,
                         const QStringList &sameInEnglish);

/// "%1", "%n" ...: each once, in order.
QStringList placesIn(const QString &text);

} // namespace lidlark::words
