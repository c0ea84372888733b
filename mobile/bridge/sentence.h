#pragma once

#include <QString>

#include "core/wording/sentence.h"

namespace lidlark::mobile {

/// A sentence of the core in the interface language: its English text is the key.
QString translated(const wording::Sentence &sentence);

} // namespace lidlark::mobile
