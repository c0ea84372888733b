#include "core/usecase/avoided_items.h"

#include "core/child/avoided.h"
#include "core/safety/avoided_tags.h"
#include "core/store/home_repository.h"

namespace lidlark::usecase {

Result<catalogue::TagSet> avoidedForChild(Workplace &workplace, const ChildId &child)
{
    store::HomeRepository homes(workplace.database);
    const auto theirs = homes.homesOf(child);
    if (!theirs)
        return theirs.error();
    catalogue::TagSet avoided;
    for (const HomeId &home : *theirs) {
        const auto sheet = homes.sheet(home);
        if (!sheet)
            return sheet.error();
        if (*sheet)
            avoided = avoided | safety::avoidedTags((*sheet)->avoidances);
    }
    return avoided;
}

bool isAvoided(const catalogue::Catalogue &catalogue, const ItemId &item,
               const catalogue::TagSet &avoided)
{
    const catalogue::ItemKind *kind = catalogue.item(item);
    if (kind == nullptr)
        return false;
    for (const child::Avoided what : {child::Avoided::Latex, child::Avoided::Wheat}) {
        if (avoided.has(child::tagOf(what)) && kind->tags.has(child::tagOf(what)))
            return true;
    }
    return false;
}

} // namespace lidlark::usecase
