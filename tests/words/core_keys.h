#pragma once

#include "tests/words/source_key.h"

#include <QStringList>

#include <vector>

namespace lidlark::words {

struct FoundKeys {
    std::vector<SourceKey> keys;
    QStringList problems; ///< A call of `say` whose argument is not plain literals.
};

/// The words in one C++ source: every `say("...")` and `sayCounted("...")`. The types of
/// core/wording/sentence.h let no sentence exist without one of them.
FoundKeys coreKeysIn(const QString &name, const QString &source);

/// Those of core/wording under @p root, each once.
FoundKeys coreKeysOf(const QString &root);

} // namespace lidlark::words
