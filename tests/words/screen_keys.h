#pragma once

#include "tests/words/core_keys.h"

namespace lidlark::words {

/// What lupdate (Qt's own collector) finds in mobile/ under @p root, and what it warns of.
FoundKeys screenKeysOf(const QString &root);

/// All a screen can say: those and the sentences of the core, in the order of a translation file.
FoundKeys allKeysOf(const QString &root);

} // namespace lidlark::words
