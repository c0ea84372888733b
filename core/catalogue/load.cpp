#include "core/catalogue/catalogue.h"

#include "core/catalogue/entry_shelf.h"
#include "core/catalogue/read_activity.h"
#include "core/catalogue/read_item.h"

namespace lidlark::catalogue {

Catalogue load(std::span<const SourceFile> items, std::span<const SourceFile> activities)
{
    std::vector<Problem> problems;
    ItemShelf itemShelf(problems);
    for (const SourceFile &file : items)
        itemShelf.put(file, readItem);
    dropUnsound(itemShelf);
    ActivityShelf activityShelf(problems);
    for (const SourceFile &file : activities)
        activityShelf.put(file, readActivity);
    dropUnsound(activityShelf, itemShelf);
    return {itemShelf.take(), activityShelf.take(), std::move(problems)};
}

} // namespace lidlark::catalogue
