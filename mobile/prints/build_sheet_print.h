#pragma once

#include "mobile/bridge/print_pages.h"
#include "mobile/prints/print_language.h"
#include "mobile/prints/print_page.h"

namespace lidlark::mobile {

/// The build sheet: what is bought, line by line, with the sum at the till; under it, as a table of
/// its own, what is in each box. As many pages as it takes.
PrintPages buildSheetPrint(const usecase::BuildSheetPage &sheet, const PrintLanguage &in,
                           QSize size);

} // namespace lidlark::mobile
