#include "well_order.h"

#include <algorithm>
#include <array>

namespace lidlark::mobile {

namespace {

/// Then anything else, in the order of the lid list.
constexpr std::array wells{"card",           "lace",        "pegs",    "onepegs",     "scissors",
                           "springscissors", "eyes",        "lids",    "dough",       "ricedough",
                           "pieces",         "largeblocks", "pompoms", "fabricballs", "bands",
                           "loops",          "crayons",     "chunky",  "balloon",     "scarf",
                           "straw",          "ball",        "pouch",   "dropper",     "rband"};

std::size_t wellOf(const ItemId &item)
{
    const auto *found = std::find(wells.begin(), wells.end(), item.value);
    return static_cast<std::size_t>(found - wells.begin());
}

} // namespace

void sortByWell(std::vector<usecase::BoxItem> &items)
{
    std::stable_sort(items.begin(), items.end(), [](const auto &a, const auto &b) {
        return wellOf(a.row.item) < wellOf(b.row.item);
    });
}

} // namespace lidlark::mobile
