#include "mobile/bridge/new_list.h"

#include "mobile/bridge/text.h"

namespace lidlark::mobile {

namespace {

/// By the child: a store has one box for each.
std::string lidKey(const Household &household)
{
    return "lid.revision." + toCore(household.child());
}

} // namespace

std::optional<usecase::RevisionState> newList(Household &household)
{
    const auto family = household.family();
    if (!family)
        return std::nullopt;
    auto state = usecase::revisionStateOf(household.workplace(), *family);
    return state ? *std::move(state) : std::nullopt;
}

bool listRemovesMore(const std::optional<usecase::RevisionState> &list)
{
    return list && !list->isConfirmed();
}

bool lidIsOutOfDate(Household &household, const std::optional<usecase::RevisionState> &list)
{
    if (!list)
        return false;
    store::DeviceRepository phone(household.workplace().database);
    const auto said = phone.localNumber(lidKey(household));
    return !said || *said < list->number;
}

Outcome sayLidIsNew(Household &household, const usecase::RevisionState &list)
{
    return store::DeviceRepository(household.workplace().database)
        .setLocalState(lidKey(household), std::to_string(list.number));
}

QString itemNames(const Household &household, const std::vector<ItemId> &items)
{
    QStringList names;
    for (const ItemId &item : items) {
        const catalogue::ItemKind *kind = household.catalogue().item(item);
        names.append(fromCore(kind != nullptr ? kind->name : item.value));
    }
    return names.join(QStringLiteral(", "));
}

} // namespace lidlark::mobile
