#pragma once

#include "mobile/bridge/print_pages.h"
#include "mobile/prints/print_language.h"
#include "mobile/prints/print_page.h"

namespace lidlark::mobile {

/// The progress summary on one page (job.md T12): words alone, and nothing that can be counted up.
PrintPage summaryPrint(const Summary &summary, const PrintLanguage &in, QSize size);

} // namespace lidlark::mobile
