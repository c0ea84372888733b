#pragma once

#include "mobile/bridge/print_pages.h"
#include "mobile/prints/print_language.h"
#include "mobile/prints/print_page.h"

namespace lidlark::mobile {

/// What needs nothing from the box, on one page: as many entries as can be read on it, and where
/// all do not fit, the first ones (job.md F7: 15 at the least).
PrintPage travelPrint(const usecase::TravelPage &travel, const PrintLanguage &in, QSize size);

} // namespace lidlark::mobile
