#pragma once

#include "mobile/bridge/print_pages.h"
#include "mobile/prints/print_language.h"
#include "mobile/prints/print_page.h"

namespace lidlark::mobile {

/// The restock round, by item and then by box, with a square to tick each; as many pages as it
/// takes.
PrintPages restockPrint(const usecase::RestockPage &restock, const PrintLanguage &in, QSize size);

} // namespace lidlark::mobile
