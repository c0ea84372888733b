#include "core/usecase/own_entries.h"

#include "core/catalogue/write_entry.h"
#include "core/store/box_repository.h"
#include "core/usecase/avoided_items.h"
#include "core/usecase/family.h"

#include <algorithm>

namespace lidlark::usecase {

namespace {

int mostPiecesOf(const Family &family, const ItemId &item)
{
    const auto row = std::ranges::find(family.items, item, &store::ItemRow::item);
    return row == family.items.end() ? 0 : row->high + row->out;
}

/// By what it carries now; a corrected thing loses nothing that it carried before.
Result<bool> mustComeOut(Workplace &workplace, const Family &family, catalogue::TagSet carries)
{
    const auto avoided = avoidedForChild(workplace, family.box.child);
    if (!avoided)
        return avoided.error();
    return !(carries & *avoided).empty();
}

} // namespace

Result<std::vector<OwnReach>> reachOfOwn(Workplace &workplace, const catalogue::Catalogue &builtIn,
                                         const std::string &id, const std::string &text)
{
    const catalogue::SourceFile file{"items/" + id + ".yaml", text};
    auto gates = whoIsAffected(workplace, builtIn, {{file}, {}, {}, {}});
    if (!gates)
        return gates.error();
    catalogue::TagSet carries = catalogue::itemDraft(file).tags;
    if (const catalogue::ItemKind *ours = builtIn.item({id}))
        carries = carries | ours->tags;
    std::vector<OwnReach> reach;
    for (BoxRecheck &gate : *gates) {
        const auto family = loadFamily(workplace, gate.child);
        if (!family)
            return family.error();
        const auto entries = ownEntriesOf(workplace, family->box.id);
        const auto avoided = mustComeOut(workplace, *family, carries);
        if (!entries || !avoided)
            return entries ? avoided.error() : entries.error();
        OwnReach one{std::move(gate), mostPiecesOf(*family, {id}), false, std::nullopt};
        one.avoided = *avoided && one.pieces > 0;
        for (const workbench::OwnEntry &entry : *entries) {
            if (entry.sort == workbench::OwnSort::Item && entry.id == id)
                one.inBox = entry;
        }
        reach.push_back(std::move(one));
    }
    return reach;
}

} // namespace lidlark::usecase
