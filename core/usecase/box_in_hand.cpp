#include "core/usecase/box_in_hand.h"

#include "core/store/recording.h"

#include <algorithm>

namespace lidlark::usecase {

const store::ItemRow *BoxInHand::row(const ItemId &item) const
{
    const auto found = std::find_if(items.begin(), items.end(),
                                    [&item](const auto &known) { return known.item == item; });
    return found == items.end() ? nullptr : &*found;
}

Result<BoxInHand> boxInHand(Workplace &workplace, const std::string &childAlias)
{
    store::BoxRepository boxes(workplace.database);
    const auto box = boxes.boxOf(childAlias);
    if (!box)
        return box.error();
    const auto items = boxes.items(box->id);
    if (!items)
        return items.error();
    return BoxInHand{*box, *items};
}

Error notInThisBox(const ItemId &item)
{
    return {ErrorCode::NotFound, item.value + " in this box"};
}

Outcome sayOfBox(Workplace &workplace, const BoxInHand &box, const std::string &author,
                 const std::vector<Saying> &sayings)
{
    Result<store::Recording> recording =
        store::Recording::begin(workplace.database, workplace.device, workplace.clock);
    if (!recording)
        return recording.error();
    const journal::Lane lane{journal::LaneKind::Box, box.box.id.value};
    const std::string who = author.empty() ? workplace.device.person : author;
    for (const Saying &saying : sayings) {
        if (Outcome said = recording->sayAs(who, lane, saying.kind, saying.fields); !said)
            return said;
    }
    return recording->commit();
}

} // namespace lidlark::usecase
