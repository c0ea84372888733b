#pragma once

#include "mobile/bridge/household.h"

namespace lidlark::mobile {

/// How the screens of the box say one item.

/// "Stick-on eyes"; an item of a newer catalogue by its id.
QString itemName(const usecase::BoxItem &item);
/// As inside a sentence: "stick-on eyes".
QString itemNameInside(const usecase::BoxItem &item);
QString itemDrawing(const usecase::BoxItem &item);
/// "6", "4 or 5", "none".
QString countText(const usecase::BoxItem &item);
/// One word on a straw tag for what needs a look most; empty: nothing does.
QString wellTag(const usecase::BoxItem &item);
/// "1 is still in use."; empty: none is out.
QString outText(int out);
/// Few or none are left; what only waits for a washing is not among it.
bool isLow(const usecase::BoxItem &item);
/// Pieces that would fill the lid list again, at least one.
int missingPieces(const usecase::BoxItem &item);

} // namespace lidlark::mobile
