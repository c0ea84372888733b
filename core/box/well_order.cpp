#include "core/box/well_order.h"

#include <algorithm>
#include <array>

namespace lidlark::box {

namespace {

constexpr std::array wells{"card",           "lace",        "pegs",    "onepegs",     "scissors",
                           "springscissors", "eyes",        "lids",    "dough",       "ricedough",
                           "pieces",         "largeblocks", "pompoms", "fabricballs", "bands",
                           "loops",          "crayons",     "chunky",  "balloon",     "scarf",
                           "straw",          "ball",        "pouch",   "dropper",     "rband"};

} // namespace

std::size_t wellOf(const ItemId &item)
{
    const auto *found = std::find(wells.begin(), wells.end(), item.value);
    return static_cast<std::size_t>(found - wells.begin());
}

} // namespace lidlark::box
