#include "mobile/bridge/shelf_desk.h"

#include "core/box/well_order.h"
#include "core/catalogue/translation.h"
#include "core/store/clinic_repository.h"
#include "core/workbench/handed.h"
#include "core/workbench/new_item_id.h"
#include "mobile/bridge/letters.h"
#include "mobile/bridge/text.h"

#include <algorithm>

namespace lidlark::mobile {

namespace {

/// As long as nobody has said otherwise: what the catalogue says does not come back whole.
bool isUsedUp(const catalogue::ItemKind &kind)
{
    return kind.comesBack == catalogue::ComesBack::UsedUp ||
           kind.comesBack == catalogue::ComesBack::PartUsed;
}

ShelfThing thingOf(const catalogue::Catalogue &catalogue, const workbench::KeptSupplies &supplies,
                   const ItemId &item)
{
    ShelfThing thing;
    thing.kind = catalogue.item(workbench::kindOf(item));
    if (const auto kept = supplies.find(item); kept != supplies.end()) {
        thing.kept = kept->second;
        return thing;
    }
    thing.kept.supply.item = item;
    if (thing.kind != nullptr) {
        // Kept in English whatever the phone is read in: it is one name for the whole clinic.
        thing.kept.supply.name = catalogue::inEnglish(*thing.kind).name;
        thing.kept.supply.usedUp = isUsedUp(*thing.kind);
    }
    return thing;
}

} // namespace

Result<std::vector<ShelfThing>> thingsOnShelf(Household &household)
{
    const auto supplies = usecase::keptSupplies(household.workplace());
    if (!supplies)
        return supplies.error();
    std::vector<ShelfThing> things;
    for (const catalogue::ItemKind &kind : household.catalogue().items()) {
        if (kind.source == catalogue::Source::Box || supplies->contains(kind.id))
            things.push_back(thingOf(household.catalogue(), *supplies, kind.id));
    }
    for (const auto &[item, kept] : *supplies) {
        if (household.catalogue().item(item) == nullptr)
            things.push_back(thingOf(household.catalogue(), *supplies, item));
    }
    std::ranges::stable_sort(things, {}, [](const ShelfThing &thing) {
        return box::wellOf(workbench::kindOf(thing.item()));
    });
    return things;
}

Result<ShelfThing> thingOnShelf(Household &household, const ItemId &item)
{
    const auto supplies = usecase::keptSupplies(household.workplace());
    if (!supplies)
        return supplies.error();
    return thingOf(household.catalogue(), *supplies, item);
}

QString shelfName(const ShelfThing &thing)
{
    const bool byCatalogue = thing.kind != nullptr && thing.kind->id == thing.item();
    return capitalised(fromCore(byCatalogue ? thing.kind->name : thing.kept.supply.name));
}

QString shelfDrawing(const ShelfThing &thing)
{
    return thing.kind != nullptr ? fromCore(thing.kind->drawing) : QStringLiteral("item-box");
}

std::string shelfCurrency(Household &household)
{
    constexpr auto usual = "GBP";
    store::ClinicRepository clinic(household.workplace().database);
    const auto builds = clinic.builds();
    if (!builds || builds->empty())
        return usual;
    const auto newest = clinic.build(builds->front().id);
    return newest && *newest ? (*newest)->build.currency : usual;
}

Outcome keepOnShelf(Household &household, workbench::KeptSupply supply)
{
    const auto supplies = usecase::keptSupplies(household.workplace());
    if (!supplies)
        return supplies.error();
    if (supply.supply.item.empty()) {
        supply.supply.item = workbench::newItemId(supply.supply.name, [&](const ItemId &id) {
            return supplies->contains(id) || household.catalogue().item(id) != nullptr;
        });
    }
    Outcome kept = usecase::keepSupply(household.workplace(), std::move(supply));
    if (kept)
        household.announce();
    return kept;
}

} // namespace lidlark::mobile
