#pragma once

#include "mobile/bridge/print_pages.h"
#include "mobile/prints/print_language.h"

namespace lidlark::mobile {

/// A line of the progress summary.
struct SummaryLine {
    QString text;
    bool bold = false;
    int indent = 0;      ///< Steps.
    bool marked = false; ///< The level that a goal stands at: by a peg, and by its word.
};

/// One part of it under its heading.
struct SummaryPart {
    QString heading;
    std::vector<SummaryLine> lines;
};

/// What stands on the page, in order: goals, what was played, the box, what nobody knows.
std::vector<SummaryPart> summaryParts(const Summary &summary, const PrintLanguage &in);
/// "Nothing on this page is a score.", and by whose yes plays are told.
QString summaryFoot(const Summary &summary, const PrintLanguage &in);

} // namespace lidlark::mobile
