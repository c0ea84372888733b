#pragma once

#include <QString>

#include "mobile/bridge/household.h"

#include <vector>

namespace lidlark::mobile {

/// What the catalogue knows of one thing, to be read and never ticked.
struct CatalogueFact {
    QString label; ///< "Measures".
    QString words; ///< A line each.
};

/// In the order in which they are shown; what the catalogue is silent about is left out.
std::vector<CatalogueFact> catalogueFacts(const catalogue::Catalogue &catalogue,
                                          const catalogue::ItemKind &kind);

/// Its cautions as a few words: "Small parts, latex"; none: empty.
QString cautionsInShort(const catalogue::ItemKind &kind);

} // namespace lidlark::mobile
