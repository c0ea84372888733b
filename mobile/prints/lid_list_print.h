#pragma once

#include "mobile/bridge/print_pages.h"
#include "mobile/prints/print_language.h"
#include "mobile/prints/print_page.h"

namespace lidlark::mobile {

/// The lid list on cards of @p size: a picture, a number and a name a line. In two languages they
/// stand side by side with the same numbers and revision, the one from the right at the right.
PrintPages lidListPrint(const usecase::LidListPage &list, const PrintLanguages &languages,
                        QSize size);

} // namespace lidlark::mobile
