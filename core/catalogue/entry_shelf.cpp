#include "core/catalogue/entry_shelf.h"

#include "core/catalogue/check_activity.h"

namespace lidlark::catalogue {

namespace {

void checkSwapTarget(const ItemKind &item, const std::map<ItemId, ItemKind> &items,
                     Findings &findings)
{
    if (item.swap && !items.contains(item.swap->with))
        findings.addAt("swap.with", "there is no sound item \"" + item.swap->with.value + "\"");
}

} // namespace

bool isPlainId(std::string_view id)
{
    return !id.empty() &&
           id.find_first_not_of("abcdefghijklmnopqrstuvwxyz0123456789-") == std::string_view::npos;
}

void checkId(const std::string &id, const std::string &file, Findings &findings)
{
    if (!isPlainId(id))
        findings.addAt("id", "must be lower-case letters, digits and hyphens");
    else if (id != stemOf(file))
        findings.addAt("id", "must be the file's name, \"" + stemOf(file) + "\"");
}

void dropUnsound(ItemShelf &items)
{
    // An item that falls may have been the swap of another.
    while (items.drop([&items](const ItemKind &item, Findings &findings) {
        checkSwapTarget(item, items.entries(), findings);
    })) {
    }
}

void dropUnsound(ActivityShelf &activities, const ItemShelf &items)
{
    std::map<std::string, ActivityId> byNumber;
    activities.drop([&](const Activity &activity, Findings &findings) {
        checkActivity(activity, items.entries(), findings);
        const auto [holder, isNew] = byNumber.emplace(activity.entry, activity.id);
        if (!isNew)
            findings.addAt("entry", "is the number of " + holder->second.value + " already");
    });
}

} // namespace lidlark::catalogue
