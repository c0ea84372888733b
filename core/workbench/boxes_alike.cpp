#include "core/workbench/boxes_alike.h"

#include <map>
#include <utility>

namespace lidlark::workbench {

namespace {

/// Of each item how many pieces, and what it stands in for: each stands once in a box.
using Contents = std::map<ItemId, std::pair<int, ItemId>>;

std::pair<DesignId, Contents> contentsOf(const BuildBox &box)
{
    std::pair<DesignId, Contents> contents{box.design, {}};
    for (const BoxPart &part : box.parts)
        contents.second[part.item] = {part.pieces, part.insteadOf};
    return contents;
}

} // namespace

std::vector<std::vector<std::size_t>> boxesAlike(std::span<const KeptBox> boxes)
{
    std::vector<std::vector<std::size_t>> groups;
    std::map<std::pair<DesignId, Contents>, std::size_t> places;
    for (std::size_t i = 0; i < boxes.size(); ++i) {
        const auto [place, first] = places.try_emplace(contentsOf(boxes[i].box), groups.size());
        if (first)
            groups.emplace_back();
        groups[place->second].push_back(i);
    }
    return groups;
}

} // namespace lidlark::workbench
