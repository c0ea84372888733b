#pragma once

#include "mobile/bridge/print_pages.h"
#include "mobile/prints/print_language.h"
#include "mobile/prints/print_page.h"

namespace lidlark::mobile {

/// The pack list with squares to tick: box by box, or item by item. What is called out of a box
/// stands white on black, in words; a special box has a second column of squares, for whoever
/// looks it over. As many pages as it takes.
PrintPages packListPrint(const usecase::PackListPage &list, bool byItem, const PrintLanguage &in,
                         QSize size);

} // namespace lidlark::mobile
