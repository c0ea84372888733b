#include "core/usecase/items_around.h"

#include <algorithm>

namespace lidlark::usecase {

namespace {

using catalogue::ItemKind;
using safety::Reason;
using safety::ReasonCode;

bool uses(std::span<const catalogue::ItemUse> items, const ItemId &id)
{
    return std::ranges::any_of(items,
                               [&id](const catalogue::ItemUse &use) { return use.item == id; });
}

/// What its place says already is not said twice.
bool saysWhereItIs(const Reason &reason)
{
    return reason.code == ReasonCode::ItemMissing || reason.code == ReasonCode::HomeLacksExtra;
}

bool isAbout(const Reason &reason, const ItemKind &kind)
{
    if (reason.item)
        return *reason.item == kind.id && !saysWhereItIs(reason);
    return reason.tag && kind.tags.has(*reason.tag);
}

safety::Refusal ownReasons(const ItemKind &kind, const safety::Gated &gated)
{
    safety::Refusal reasons;
    for (const safety::HeldBack &held : gated.heldBack) {
        if (!uses(held.activity->items, kind.id))
            continue;
        for (const Reason &reason : held.reasons) {
            const bool known = std::ranges::find(reasons, reason) != reasons.end();
            if (isAbout(reason, kind) && !known)
                reasons.push_back(reason);
        }
    }
    return reasons;
}

ItemPlace homePlace(const Family &family, const ItemId &id)
{
    const bool lacks = family.sheet && std::ranges::find(family.sheet->missingExtras, id) !=
                                           family.sheet->missingExtras.end();
    return lacks ? ItemPlace::NotAtHome : ItemPlace::AtHome;
}

ItemStanding standingOf(const ItemKind &kind, const Family &family)
{
    ItemStanding standing{&kind, ItemPlace::NotInBox, 0, 0, 0, {}};
    const auto row = std::ranges::find_if(
        family.items, [&kind](const store::ItemRow &item) { return item.item == kind.id; });
    if (row != family.items.end() && (row->expected > 0 || row->high > 0)) {
        standing.place = ItemPlace::InBox;
        standing.low = row->low;
        standing.high = row->high;
    } else if (kind.source == catalogue::Source::Home) {
        standing.place = homePlace(family, kind.id);
    }
    return standing;
}

} // namespace

std::vector<ItemStanding> itemsAround(const Family &family, const catalogue::Catalogue &catalogue,
                                      const safety::Gated &gated)
{
    std::vector<ItemStanding> all;
    all.reserve(catalogue.items().size());
    for (const ItemKind &kind : catalogue.items()) {
        ItemStanding standing = standingOf(kind, family);
        standing.fits = static_cast<int>(
            std::ranges::count_if(gated.admitted, [&kind](const safety::Admitted &admitted) {
                return uses(admitted.items(), kind.id);
            }));
        if (standing.fits == 0)
            standing.heldBack = ownReasons(kind, gated);
        all.push_back(std::move(standing));
    }
    return all;
}

} // namespace lidlark::usecase
