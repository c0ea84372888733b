#include "core/workbench/item_use.h"

#include "core/workbench/handed.h"

#include <algorithm>
#include <set>

namespace lidlark::workbench {

namespace {

using catalogue::Activity;
using catalogue::ActivitySwap;
using catalogue::Catalogue;
using catalogue::ItemUse;
using catalogue::Source;
using Kinds = std::set<ItemId>;

bool isLent(const ItemId &item, const Catalogue &catalogue)
{
    const catalogue::ItemKind *kind = catalogue.item(item);
    return kind != nullptr && kind->source == Source::Home;
}

bool isAtHand(const ItemUse &use, const Activity &activity, const Kinds &box,
              const Catalogue &catalogue)
{
    if (use.source == Source::Home || box.contains(use.item))
        return true;
    return std::ranges::any_of(activity.swaps, [&](const ActivitySwap &swap) {
        return swap.item == use.item && (box.contains(swap.with) || isLent(swap.with, catalogue));
    });
}

bool canBeMade(const Activity &activity, const Kinds &box, const Catalogue &catalogue)
{
    return std::ranges::all_of(activity.items, [&](const ItemUse &use) {
        return use.role != catalogue::Role::Must || isAtHand(use, activity, box, catalogue);
    });
}

bool takes(const Activity &activity, const ItemId &kind, const Kinds &box)
{
    const auto asItself = [&](const ItemUse &use) { return use.item == kind; };
    const auto asSwap = [&](const ActivitySwap &swap) {
        return swap.with == kind && !box.contains(swap.item);
    };
    return std::ranges::any_of(activity.items, asItself) ||
           std::ranges::any_of(activity.swaps, asSwap);
}

/// The box without one of its parts; scissors for the other hand stay scissors.
Kinds kindsOf(std::span<const BoxPart> parts, const ItemId &without = {})
{
    Kinds kinds;
    for (const BoxPart &part : parts) {
        if (part.item != without)
            kinds.insert(kindOf(part.item));
    }
    return kinds;
}

ItemPlay playOf(const ItemId &item, std::span<const BoxPart> parts,
                const std::vector<const Activity *> &made, const Catalogue &catalogue)
{
    const ItemId kind = kindOf(item);
    const Kinds all = kindsOf(parts);
    const Kinds others = kindsOf(parts, item);
    ItemPlay play{item, catalogue.item(kind) != nullptr, 0, 0};
    for (const Activity *activity : made) {
        play.activities += takes(*activity, kind, all) ? 1 : 0;
        play.lost += canBeMade(*activity, others, catalogue) ? 0 : 1;
    }
    return play;
}

} // namespace

PlayInBox playIn(std::span<const BoxPart> parts, const Catalogue &catalogue)
{
    const Kinds box = kindsOf(parts);
    std::vector<const Activity *> made;
    for (const Activity &activity : catalogue.activities()) {
        if (canBeMade(activity, box, catalogue))
            made.push_back(&activity);
    }
    PlayInBox play{static_cast<int>(made.size()), {}};
    for (const BoxPart &part : parts)
        play.items.push_back(playOf(part.item, parts, made, catalogue));
    return play;
}

} // namespace lidlark::workbench
