#include "core/workbench/design_difference.h"

#include <algorithm>

namespace lidlark::workbench {

namespace {

const BoxPart *partOf(std::span<const BoxPart> parts, const ItemId &item)
{
    const auto found = std::ranges::find(parts, item, &BoxPart::item);
    return found == parts.end() ? nullptr : &*found;
}

/// It is in the place of a part of the design that is gone.
bool standsIn(const Design &design, std::span<const BoxPart> parts, const BoxPart &part)
{
    return !partOf(design.parts, part.item) && partOf(design.parts, part.insteadOf) &&
           !partOf(parts, part.insteadOf);
}

} // namespace

std::vector<DesignDifference> differencesFrom(const Design &design, std::span<const BoxPart> parts)
{
    std::vector<DesignDifference> differences;
    for (const BoxPart &designed : design.parts) {
        const std::size_t before = differences.size();
        if (const BoxPart *kept = partOf(parts, designed.item)) {
            if (kept->pieces != designed.pieces)
                differences.push_back(
                    {DifferenceKind::OtherCount, designed.item, {}, designed.pieces, kept->pieces});
            continue;
        }
        for (const BoxPart &part : parts) {
            if (part.insteadOf == designed.item && standsIn(design, parts, part))
                differences.push_back({DifferenceKind::Swapped, designed.item, part.item,
                                       designed.pieces, part.pieces});
        }
        if (differences.size() == before)
            differences.push_back({DifferenceKind::LeftOut, designed.item, {}, designed.pieces, 0});
    }
    for (const BoxPart &part : parts) {
        if (!partOf(design.parts, part.item) && !standsIn(design, parts, part))
            differences.push_back({DifferenceKind::Added, part.item, {}, 0, part.pieces});
    }
    return differences;
}

} // namespace lidlark::workbench
