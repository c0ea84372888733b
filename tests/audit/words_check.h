#pragma once

#include "tests/audit/page.h"

#include <QStringList>

namespace lidlark::audit {

/// What cannot be read, one line each: words cut short or wider or taller than their place, painted
/// over other words, or where nobody can scroll to (job.md A1, A10).
[[nodiscard]] QStringList checkWords(const Page &page);

/// Whether a part can be brought into view: by no clip above it cut for good, beside no edge.
/// @returns why not; empty: it can.
[[nodiscard]] QString whyOutOfReach(const Part &part, const QQuickWindow *window);

} // namespace lidlark::audit
