#include "core/usecase/restock_round.h"

#include "core/box/request.h"
#include "core/usecase/box_in_hand.h"
#include "core/usecase/family.h"

#include <algorithm>
#include <map>

namespace lidlark::usecase {

namespace {

using box::RequestStep;

std::string wayKey(const BoxId &box)
{
    return "round.way." + box.value;
}

Result<Way> wayTo(Workplace &workplace, const BoxId &box)
{
    const auto kept = store::DeviceRepository(workplace.database).localState(wayKey(box));
    if (!kept)
        return kept.error();
    return *kept ? wayNames.parse(**kept).value_or(Way::Post) : Way::Post;
}

const box::Request *requestInHand(const store::ItemRow &row)
{
    const bool open = !row.requests.empty() && row.requests.back().isOpen();
    return open && row.requests.back().step < RequestStep::OnItsWay ? &row.requests.back()
                                                                    : nullptr;
}

RoundLine lineFor(const std::string &child, const store::ItemRow &row, const box::Request &request)
{
    return {child,
            std::max(1, row.expected - row.high - row.out),
            request.step == RequestStep::Packed,
            request.insteadOf,
            request.askedBy,
            request.asked};
}

} // namespace

int RoundItem::piecesToPack() const
{
    int pieces = 0;
    for (const RoundLine &line : lines)
        pieces += line.packed ? 0 : line.pieces;
    return pieces;
}

Result<RestockRound> restockRound(Workplace &workplace)
{
    store::BoxRepository repository(workplace.database);
    auto boxes = repository.boxes();
    if (!boxes)
        return boxes.error();
    std::ranges::sort(*boxes, {}, &store::BoxRow::alias);
    RestockRound round;
    std::map<ItemId, std::vector<RoundLine>> byItem;
    for (const store::BoxRow &box : *boxes) {
        const auto rows = repository.items(box.id);
        const auto revision = repository.revision(box.id);
        const auto way = wayTo(workplace, box.id);
        if (!rows || !revision || !way)
            return !rows ? rows.error() : !revision ? revision.error() : way.error();
        RoundBox stop{box.alias, *way, 0, 0};
        for (const store::ItemRow &row : *rows) {
            const box::Request *request = requestInHand(row);
            const bool removed = *revision && (*revision)->revision.removed.contains(row.item);
            if (request == nullptr || removed)
                continue;
            byItem[row.item].push_back(lineFor(box.alias, row, *request));
            ++(request->step == RequestStep::Packed ? stop.packed : stop.toPack);
        }
        if (stop.packed + stop.toPack > 0)
            round.boxes.push_back(stop);
    }
    for (auto &[item, lines] : byItem)
        round.items.push_back({item, std::move(lines)});
    return round;
}

Outcome packFor(Workplace &workplace, const std::string &childAlias, const ItemId &item)
{
    return moveRequest(workplace, childAlias, {}, item, RequestStep::Packed);
}

Outcome goBy(Workplace &workplace, const std::string &childAlias, Way way)
{
    const auto box = store::BoxRepository(workplace.database).boxOf(childAlias);
    if (!box)
        return box.error();
    return store::DeviceRepository(workplace.database)
        .setLocalState(wayKey(box->id), std::string(wayNames.of(way)));
}

Outcome sendOff(Workplace &workplace, const std::string &childAlias)
{
    const auto box = boxInHand(workplace, childAlias);
    if (!box)
        return box.error();
    std::vector<Saying> sayings;
    for (const store::ItemRow &row : box->items) {
        const box::Request *request = requestInHand(row);
        if (request != nullptr && request->step == RequestStep::Packed)
            sayings.push_back({journal::Kind::Request,
                               box::fieldsOf(box::RequestSaid{
                                   row.item, request->round, RequestStep::OnItsWay, {}})});
    }
    if (sayings.empty())
        return Error{ErrorCode::NotFound, "anything packed for " + childAlias};
    return sayOfBox(workplace, *box, {}, sayings);
}

} // namespace lidlark::usecase
