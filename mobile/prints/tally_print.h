#pragma once

#include "mobile/bridge/print_pages.h"
#include "mobile/prints/print_language.h"
#include "mobile/prints/print_page.h"

namespace lidlark::mobile {

/// A week's tally on one page: a square a thing and a word, to be typed in at the next visit.
PrintPage tallyPrint(const usecase::TallyPage &tally, const PrintLanguage &in, QSize size);

} // namespace lidlark::mobile
