#pragma once

#include "mobile/bridge/print_pages.h"
#include "mobile/prints/print_language.h"
#include "mobile/prints/print_page.h"

namespace lidlark::mobile {

/// A label, tenths of a millimetre: eight of them are cut from A4 or Letter.
inline constexpr QSize labelSize{960, 600};

/// What visitors may read on a box (job.md T6, D9), and nothing else.
PrintPage labelPrint(const usecase::LabelPage &label, const PrintLanguages &languages);

} // namespace lidlark::mobile
