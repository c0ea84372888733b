#include "well_order.h"

#include "core/box/well_order.h"

#include <algorithm>

namespace lidlark::mobile {

void sortByWell(std::vector<usecase::BoxItem> &items)
{
    std::stable_sort(items.begin(), items.end(), [](const auto &a, const auto &b) {
        return box::wellOf(a.row.item) < box::wellOf(b.row.item);
    });
}

} // namespace lidlark::mobile
