#pragma once

#include <QString>

#include "core/wording/sentence.h"

#include <vector>

namespace lidlark::mobile {

/// A sentence of the core in the language of the app: its English words are the key, and so all
/// the way down. Names and what was typed stand as they are.
QString translated(const wording::Sentence &sentence);

/// A sentence that guards somebody. While nobody has reviewed the language's words, the English
/// stands on a line of its own under them.
QString safetyText(const wording::Sentence &sentence);
/// Several in one paragraph: all the words, then all the English.
QString safetyText(const std::vector<wording::Sentence> &sentences);

/// The English on a line of its own under the translation, however well that was reviewed: for
/// words that a regulation prescribes.
QString withEnglish(const wording::Sentence &sentence);

} // namespace lidlark::mobile
