#include "core/usecase/weigh_revision.h"

#include "core/store/recording.h"
#include "core/usecase/avoided_items.h"

#include <algorithm>
#include <set>

namespace lidlark::usecase {

namespace {

using Packed = std::map<ItemId, int>;

const store::ItemRow *rowOf(const Family &family, const ItemId &item)
{
    const auto found = std::ranges::find(family.items, item, &store::ItemRow::item);
    return found == family.items.end() ? nullptr : &*found;
}

/// Pieces that have to be sent so that the box has what the list says.
int piecesToSend(const Family &family, const Packed &before, const ItemId &item, int pieces)
{
    const auto known = before.find(item);
    if (known != before.end())
        return std::max(0, pieces - known->second);
    const store::ItemRow *row = rowOf(family, item);
    return std::max(0, pieces - (row != nullptr ? row->low : 0));
}

std::set<ActivityId> possibleWith(const Workplace &workplace, const Family &family,
                                  const safety::BoxState &box, Day today)
{
    safety::Room everyone;
    safety::Room alone;
    alone.present.emplace();
    alone.besideSaid = true;
    const child::HomeSheet *home = family.sheet ? &*family.sheet : nullptr;
    std::set<ActivityId> possible;
    for (const safety::Room &room : {everyone, alone}) {
        const auto gated =
            safety::admitAll({family.child, home, room, box, workplace.catalogue, today});
        for (const safety::Admitted &admitted : gated.admitted)
            possible.insert(admitted.activity().id);
    }
    return possible;
}

void fillItems(const Family &family, const Packed &before, const Packed &packed,
               const catalogue::Catalogue &catalogue, const catalogue::TagSet &avoided,
               RevisionWeighed &weighed)
{
    for (const auto &[item, pieces] : before) {
        const store::ItemRow *row = rowOf(family, item);
        if (!packed.contains(item))
            weighed.takeOut.push_back({item, row != nullptr ? row->high + row->out : pieces});
    }
    for (const auto &[item, pieces] : packed) {
        const int toSend = piecesToSend(family, before, item, pieces);
        if (toSend > 0)
            weighed.onTheWay.push_back({item, toSend});
        if (!before.contains(item) && isAvoided(catalogue, item, avoided))
            weighed.avoided.push_back(item);
    }
}

} // namespace

Result<RevisionWeighed> weighRevision(Workplace &workplace, const Family &family,
                                      const Packed &packed)
{
    const auto today = store::todayOf(workplace.clock);
    const auto avoided = avoidedForChild(workplace, family.box.child);
    if (!today || !avoided)
        return today ? avoided.error() : today.error();
    const Packed before = family.revision ? family.revision->revision.packed : Packed{};
    RevisionWeighed weighed;
    fillItems(family, before, packed, workplace.catalogue, *avoided, weighed);

    safety::BoxState box = boxStateOf(family, workplace.catalogue, today->day);
    box.here = true;
    const auto now = possibleWith(workplace, family, box, today->day);
    for (const Pieces &out : weighed.takeOut)
        box.items[out.item] = {};
    const auto sent = possibleWith(workplace, family, box, today->day);
    for (const Pieces &added : weighed.onTheWay)
        box.items[added.item].low += added.pieces;
    const auto come = possibleWith(workplace, family, box, today->day);

    for (const catalogue::Activity &activity : workplace.catalogue.activities()) {
        const bool was = now.contains(activity.id);
        const bool will = come.contains(activity.id);
        if (was && !will)
            weighed.goes.push_back(activity.id);
        else if (was && !sent.contains(activity.id))
            weighed.waits.push_back(activity.id);
        else if (!was && will)
            weighed.comes.push_back(activity.id);
    }
    return weighed;
}

} // namespace lidlark::usecase
