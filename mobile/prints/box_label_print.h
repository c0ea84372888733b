#pragma once

#include "core/wording/label_words.h"
#include "mobile/bridge/print_pages.h"
#include "mobile/prints/print_language.h"
#include "mobile/prints/print_page.h"

namespace lidlark::mobile {

/// The label words of what is in a box, on a card of @p size to lie beside the lid list or on its
/// back: exactly as they are prescribed, in English; in other languages the translation stands
/// above them. Empty where nothing in the box carries any.
PrintPages boxLabelPrint(const usecase::LidListPage &list, const PrintLanguages &languages,
                         QSize size, wording::Region region);

} // namespace lidlark::mobile
