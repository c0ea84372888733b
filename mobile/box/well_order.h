#pragma once

#include "mobile/bridge/household.h"

#include <vector>

namespace lidlark::mobile {

/// An item keeps its well in the tray for good, whatever the lid list's order.
void sortByWell(std::vector<usecase::BoxItem> &items);

} // namespace lidlark::mobile
