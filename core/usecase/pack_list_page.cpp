#include "core/usecase/pack_list_page.h"

#include "core/store/clinic_repository.h"

#include <algorithm>
#include <numeric>

namespace lidlark::usecase {

namespace {

using workbench::CallKind;
using workbench::CallOut;

bool isOf(const CallOut &call, const workbench::PackLine &line)
{
    if (call.kind == CallKind::LeftHand)
        return line.hand != workbench::Hand::Unsaid;
    return call.kind != CallKind::Avoids && call.kind != CallKind::LeftOut &&
           call.item == line.item;
}

void addBox(const workbench::PackBox &box, std::vector<PackListItem> &items)
{
    for (const workbench::PackLine &line : box.lines) {
        auto item = std::ranges::find(items, line.item, &PackListItem::item);
        if (item == items.end())
            item = items.insert(items.end(), {line.item, {}});
        PackListPlace place{box.code, box.whose, box.special, line, {}};
        std::ranges::copy_if(box.callOuts, std::back_inserter(place.callOuts),
                             [&line](const CallOut &call) { return isOf(call, line); });
        item->places.push_back(std::move(place));
    }
}

} // namespace

int PackListItem::pieces() const
{
    return std::accumulate(
        places.begin(), places.end(), 0,
        [](int sum, const PackListPlace &place) { return sum + place.line.pieces; });
}

Result<PackListPage> packListPageOf(Workplace &therapist, const workbench::BuildId &build)
{
    const auto table = packTable(therapist, build);
    const auto supplies = store::ClinicRepository(therapist.database).supplies();
    if (!table || !supplies)
        return !table ? table.error() : supplies.error();
    PackListPage page{table->build.name, table->build.day, {}, {}, {}};
    for (const workbench::PackBox &box : table->boxes) {
        if (table->isHandedOver(box.code))
            continue;
        addBox(box, page.items);
        page.boxes.push_back(box);
    }
    for (const auto &[item, kept] : *supplies)
        page.names[item] = kept.supply.name;
    return page;
}

Result<workbench::BuildId> buildToPack(Workplace &therapist)
{
    store::ClinicRepository clinic(therapist.database);
    const auto builds = clinic.builds();
    if (!builds)
        return builds.error();
    for (const store::BuildRow &build : *builds) {
        const auto handedOver = clinic.handedOverAs(build.id);
        if (!handedOver)
            return handedOver.error();
        if (std::ssize(*handedOver) < build.boxes)
            return build.id;
    }
    if (builds->empty())
        return Error{ErrorCode::NotFound, "a build"};
    return builds->front().id;
}

} // namespace lidlark::usecase
