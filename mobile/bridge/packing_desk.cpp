#include "mobile/bridge/packing_desk.h"

#include "core/usecase/keep_supply.h"
#include "core/wording/catalogue_terms.h"
#include "core/workbench/handed.h"
#include "mobile/bridge/letters.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

namespace {

/// As it stands on a page of the app's own language.
QString textOf(const wording::Argument &name)
{
    if (const auto *words = std::get_if<wording::Translated>(&name.content))
        return fromCore(words->text);
    const auto *text = std::get_if<std::string>(&name.content);
    return text != nullptr ? fromCore(*text) : QString();
}

} // namespace

wording::ItemNames packingNames(Household &household)
{
    const auto supplies = usecase::keptSupplies(household.workplace());
    return [&household, supplies](const ItemId &item) -> wording::Argument {
        if (const auto *kind = household.catalogue().item(workbench::kindOf(item)))
            return wording::nameOf(*kind);
        if (supplies) {
            if (const auto kept = supplies->find(item); kept != supplies->end())
                return {kept->second.supply.name};
        }
        return {item.value};
    };
}

QString packingName(const wording::ItemNames &names, const ItemId &item)
{
    return capitalised(textOf(names(item)));
}

} // namespace lidlark::mobile
